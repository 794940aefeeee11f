'use strict';
// Looks up what the program wrote into this page, and keeps what is typed. No rule stands here.
(function () {
  var data = JSON.parse(document.getElementById('data').textContent);
  // Minutes before a table begins, or after it ends, that still count as its first or last.
  var BESIDE = 5;

  function tableOf(stop, state) {
    return stop.tables.filter(function (each) { return each.state === state; })[0];
  }

  function between(from, to, part) {
    return from === undefined || to === undefined ? undefined : from + (to - from) * part;
  }

  function among(say, from, figure) {
    var k = say.length - 1;
    while (k > 0 && figure < from[k]) { k--; }
    return say[k];
  }

  /** What is told of a figure; null where the page does not know, so that the program is asked. */
  function lookUp(stop, state, tire, minute, figure, gauge) {
    var table = tableOf(stop, state);
    if (!table || gauge !== data.tried) { return null; }
    var times = table.times;
    var last = times.length - 1;
    if (minute < times[0] - BESIDE || minute > times[last] + BESIDE) { return null; }
    var at = Math.min(Math.max(minute, times[0]), times[last]);
    var i = 0;
    while (i < last && times[i + 1] <= at) { i++; }
    var j = Math.min(i + 1, last);
    var part = i === j ? 0 : (at - times[i]) / (times[j] - times[i]);
    var one = table.slots[i][tire] || table.slots[j][tire];
    var other = table.slots[j][tire] || one;
    if (!one) { return null; }
    var near = part < 0.5 ? one : other;
    var alike = one.expected !== undefined && other.expected !== undefined;
    var told = { expected: alike ? between(one.expected, other.expected, part) : near.expected };
    ['low', 'high', 'least', 'most'].forEach(function (name) {
      told[name] = alike ? between(one[name], other[name], part) : near[name];
    });
    told.open = near.open;
    if (figure === null) { return told; }
    if (figure > near.top) { return told; }
    var said;
    if (one.say.join() === other.say.join()) {
      said = among(one.say, one.from.map(function (edge, k) {
        return between(edge, other.from[k], part);
      }), figure);
    } else {
      // Two minutes that do not tell the same things: the more careful of what they tell of a
      // figure as far from what each expects.
      var first = among(one.say, one.from, alike ? figure - told.expected + one.expected : figure);
      var second = among(other.say, other.from,
        alike ? figure - told.expected + other.expected : figure);
      said = data.care[first] >= data.care[second] ? first : second;
    }
    var off = told.expected === undefined ? 0 : figure - told.expected;
    told.off = told.expected === undefined ? undefined : off;
    told.unexpected = figure < told.least || figure > told.most;
    told.mark = data.texts[said][0];
    told.lines = data.texts[said].slice(1).map(function (line) {
      return line.split('{off}').join(shown(Math.abs(off)) + ' ' + data.unit);
    });
    return told;
  }

  function shown(number) { return number.toFixed(data.decimals); }

  function range(told) {
    return told.low === undefined
      ? '' : shown(told.low) + '–' + shown(told.high) + (told.open ? '+' : '');
  }

  // What was typed, kept by this browser for this page where it can.
  var KEY = 'dawngauge ' + data.fingerprint + ' ' + data.made;
  var kept = true;
  var entries = [];
  try { entries = JSON.parse(localStorage.getItem(KEY) || '[]'); } catch (e) { kept = false; }

  function keep() {
    try { localStorage.setItem(KEY, JSON.stringify(entries)); kept = true; } catch (e) {
      kept = false;
    }
    draw(false);
  }

  function find(round, tire, kind) {
    return entries.filter(function (each) {
      return each.round === round.id && each.tire === tire && each.kind === kind;
    })[0];
  }

  function clockNow() { return Math.floor(Date.now() / 60000); }

  /** Minutes that the clock of the stop is ahead of UTC. */
  function offset(stop, minute) { return minute >= stop.turn ? stop.after : stop.offset; }

  function local(stop, minute) {
    return new Date((minute + offset(stop, minute)) * 60000).toISOString().slice(0, 16);
  }

  function minuteAt(stop, text) {
    var wall = Date.parse(text + 'Z') / 60000;
    return wall - offset(stop, wall - stop.offset);
  }

  function sent() {
    return JSON.stringify({
      format: data.format, version: data.version, trip: data.trip,
      fingerprint: data.fingerprint, made: data.made,
      entries: entries.map(function (each) {
        var copy = {};
        ['kind', 'stop', 'tire', 'at', 'figure', 'gauge', 'state', 'text'].forEach(function (name) {
          if (each[name] !== undefined) { copy[name] = each[name]; }
        });
        return copy;
      })
    }, null, 1);
  }

  // The page.
  var app = document.getElementById('app');
  var read = document.getElementById('read');
  var sections = Array.prototype.slice.call(read.querySelectorAll('section.stop'));
  var flat = document.getElementById('flat');
  var view = 'stops';
  var current = 0;
  var round = null;
  var order = -1;
  var typed = '';
  var kind = 'reading';
  var note = '';
  var form = null;
  var words = { stops: 'Stops', round: 'Gauge', flat: 'Flat tire', back: 'Send back' };

  function element(name, set, children) {
    var made = document.createElement(name);
    Object.keys(set || {}).forEach(function (key) {
      var value = set[key];
      if (key.slice(0, 2) === 'on') { made.addEventListener(key.slice(2), value); }
      else if (key === 'text') { made.textContent = value; }
      else if (value !== false && value !== undefined) {
        made.setAttribute(key, value === true ? '' : value);
      }
    });
    (children || []).forEach(function (child) { if (child) { made.appendChild(child); } });
    return made;
  }

  function button(text, action, set) {
    var all = { type: 'button', text: text, onclick: action };
    Object.keys(set || {}).forEach(function (key) { all[key] = set[key]; });
    return element('button', all);
  }

  function para(text, style) { return element('p', { text: text, 'class': style || false }); }

  function choice(label, values, value, change) {
    var select = element('select', { onchange: function () { change(select.value); } },
      values.map(function (each) {
        return element('option', { value: String(each[0]), text: each[1],
          selected: String(each[0]) === String(value) });
      }));
    return element('label', { text: label }, [select]);
  }

  function go(to) {
    view = to;
    order = -1;
    draw(true);
  }

  function stopNow() { return data.stops[current]; }

  function picker() {
    function move(by) { return function () { current += by; round = null; form = null; draw(true); }; }
    return element('div', { 'class': 'row' }, [
      button('◀', move(-1), { 'class': 'slim', 'aria-label': 'Stop before', disabled: current === 0 }),
      choice('Stop', data.stops.map(function (stop, i) {
        return [i, stop.number + '. ' + stop.place];
      }), current, function (value) { current = Number(value); round = null; form = null; draw(true); }),
      button('▶', move(1), { 'class': 'slim', 'aria-label': 'Next stop',
        disabled: current === data.stops.length - 1 })
    ]);
  }

  function stopsView() {
    var stop = stopNow();
    var area = element('textarea', { maxlength: data.longestNote,
      oninput: function () { note = area.value; } });
    area.value = note;
    var noted = entries.filter(function (each) {
      return each.kind === 'note' && each.stop === stop.id;
    });
    return [
      picker(),
      button('Gauge the tires here', function () { go('round'); }),
      element('details', { open: note !== '' }, [
        element('summary', { text: 'Note' + (noted.length ? ' (' + noted.length + ' kept)' : '') })
      ].concat(noted.length ? [element('ul', {}, noted.map(function (each) {
        return forgettable(each.at.replace('T', ' ') + ' ' + each.text, each);
      }))] : [])
        .concat([
          element('label', { text: 'What is to be kept of this stop' }, [area]),
          button('Keep the note', function () {
            if (note.trim()) {
              entries.push({ kind: 'note', stop: stop.id, at: local(stop, clockNow()),
                text: note.trim() });
              note = '';
              keep();
            }
          })
        ]))
    ];
  }

  function states() { return ['cold', 'warm']; }

  function beginView() {
    var stop = stopNow();
    form = form || { state: stop.usual === 'warm' ? 'warm' : 'cold', sun: '', gauge: data.gauges[0],
      at: '' };
    var parts = [picker(), element('h2', { text: 'Gauge at ' + stop.place, tabindex: -1 })];
    if (!data.gauges.length) {
      return parts.concat([para('The rig has no gauge yet: type one in the program.', 'caution')]);
    }
    parts.push(element('fieldset', {}, [
      element('legend', { text: 'The tires are' }),
      element('div', { 'class': 'row' }, states().map(function (state) {
        return button(state, function () { form.state = state; draw(false); },
          { 'aria-pressed': String(form.state === state) });
      }))
    ]));
    if (form.state === 'cold' && tableOf(stop, 'cold, in sun')) {
      parts.push(choice('The sun is on', [['', 'neither side'], ['left', 'the left side'],
        ['right', 'the right side']], form.sun, function (value) { form.sun = value; }));
    }
    parts.push(choice('Gauge', data.gauges.map(function (name) { return [name, name]; }), form.gauge,
      function (value) { form.gauge = value; }));
    var time = element('input', { type: 'datetime-local',
      onchange: function () { form.at = time.value; } });
    time.value = form.at;
    parts.push(element('label', { text: 'Begun at, if not now (clock of the stop)' }, [time]));
    parts.push(element('div', { 'class': 'row' }, [
      round ? button('Go on with the last', function () { to(stop.tires.length); }) : null,
      button('Begin', begin)
    ]));
    var mine = entries.filter(function (each) {
      return each.stop === stop.id && each.kind !== 'note';
    });
    if (mine.length) {
      parts.push(element('h3', { text: 'Typed here' }));
      parts.push(element('ul', {}, mine.map(function (each) { return forgettable(told(stop, each), each); })));
    }
    return parts;
  }

  /** A line of what was typed, with a key to drop it. */
  function forgettable(text, entry) {
    return element('li', { text: text + ' ' }, [button('Forget', function () {
      entries.splice(entries.indexOf(entry), 1);
      keep();
    }, { 'class': 'small', 'aria-label': 'Forget ' + text })]);
  }

  function told(stop, entry) {
    var tire = stop.tires.filter(function (each) { return each.id === entry.tire; })[0];
    return entry.at.slice(11) + ' ' + (tire ? tire.short : entry.tire) + ' '
      + (entry.kind === 'set' ? 'set to ' : '') + entry.figure + ', ' + entry.state;
  }

  function begin() {
    var stop = stopNow();
    var start = form.at ? minuteAt(stop, form.at) : null;
    round = { id: stop.id + ' ' + (start === null ? clockNow() : start) + ' ' + form.state,
      start: start, state: form.state, sun: form.sun, gauge: form.gauge };
    to(0);
  }

  function to(next) {
    order = next;
    kind = 'reading';
    open();
    draw(true);
  }

  function open() {
    var tire = stopNow().tires[order];
    var known = tire && find(round, tire.id, kind);
    typed = known ? known.figure.split(' ')[0] : '';
  }

  function stateOf(tire) {
    var sunny = round.state === 'cold' && round.sun && (round.sun === 'left') === tire.left;
    return sunny ? 'cold, in sun' : round.state;
  }

  function minuteOf(tire) {
    var known = find(round, tire.id, kind);
    return known ? known.minute : round.start === null ? clockNow() : round.start + order;
  }

  function take() {
    var tire = stopNow().tires[order];
    var known = find(round, tire.id, kind);
    var figure = typed === '' || typed === '0.' ? null : Number(typed) + ' ' + data.unit;
    if (figure === null) {
      if (known) { entries.splice(entries.indexOf(known), 1); }
    } else if (known) {
      known.figure = figure;
    } else {
      var minute = minuteOf(tire);
      entries.push({ kind: kind, round: round.id, stop: stopNow().id, tire: tire.id, minute: minute,
        at: local(stopNow(), minute), figure: figure, gauge: round.gauge, state: stateOf(tire) });
    }
  }

  function press(key) {
    if (key === '⌫') { typed = typed.slice(0, -1); }
    else if (key === '.') { typed = typed.indexOf('.') < 0 ? (typed || '0') + '.' : typed; }
    else if (typed.length < 6) { typed = typed === '0' ? key : typed + key; }
    show();
  }

  function next() { take(); keep(); to(order + 1); }

  function show() {
    var stop = stopNow();
    var tire = stop.tires[order];
    var figure = typed === '' ? null : Number(typed);
    var out = document.getElementById('gauged');
    out.textContent = typed === '' ? '–' : typed;
    document.getElementById('next').textContent = typed === '' ? 'Skip' : 'Next';
    out.appendChild(element('small', { text: ' ' + data.unit }));
    var box = document.getElementById('verdict');
    box.textContent = '';
    var known = lookUp(stop, stateOf(tire), tire.id, minuteOf(tire), null, round.gauge);
    var says = document.getElementById('should');
    says.textContent = !known
      ? unknown() + ': ask the program.'
      : known.low === undefined
        ? 'The first reading of this tire.'
        : 'Should read ' + range(known) + ' ' + data.unit + ' in 9 of 10 cases.';
    var before = kind === 'set' ? find(round, tire.id, 'reading') : undefined;
    if (kind === 'set' ? !before : figure === null) { return; }
    var answer = before
      ? lookUp(stop, before.state, tire.id, before.minute, parseFloat(before.figure),
        before.gauge)
      : lookUp(stop, stateOf(tire), tire.id, minuteOf(tire), figure, round.gauge);
    if (before) { box.appendChild(para('It read ' + before.figure + ':')); }
    var mark = answer && answer.mark;
    box.appendChild(element('span', { 'class': 'mark ' + (mark ? mark.replace(' ', '-') : 'ask'),
      text: mark || 'ask the program' }));
    if (!mark) { return; }
    if (answer.off !== undefined && !answer.unexpected) {
      box.appendChild(para('Off by ' + (answer.off < 0 ? '-' : '+') + shown(Math.abs(answer.off)) + ' '
        + data.unit + '.'));
    }
    box.appendChild(element('ul', { 'class': 'do' }, answer.lines.map(function (line) {
      return element('li', { text: line });
    })));
    if (mark === 'hold' || mark === 'adjust') {
      data.cautions.forEach(function (line) { box.appendChild(para(line, 'caution')); });
    }
  }

  /** Why there is no word on a reading. */
  function unknown() {
    return data.followed ? 'A plan is followed'
      : data.tried && round.gauge !== data.tried ? 'Made for another gauge'
      : 'Not made for this minute';
  }

  function tireView() {
    var stop = stopNow();
    var tire = stop.tires[order];
    if (!tire) {
      return [element('h2', { text: 'Round at ' + stop.place, tabindex: -1 }),
        para('Press a tire to change it.'),
        element('div', { 'class': 'list' }, stop.tires.map(function (each, i) {
          var was = find(round, each.id, 'reading');
          var set = find(round, each.id, 'set');
          return element('button', { type: 'button', onclick: function () { to(i); } }, [
            element('span', { text: each.words + ' (' + each.short + ')' }),
            element('span', { text: (was ? was.figure : 'not read')
              + (set ? ', set to ' + set.figure : '') })
          ]);
        })),
        element('div', { 'class': 'row' }, [
          button('Done: send back', function () { go('back'); }),
          button('Another round', function () { round = null; form = null; go('round'); })
        ])];
    }
    var pressed = function (what, text) {
      return button(text, function () { take(); keep(); kind = what; open(); draw(false); },
        { 'aria-pressed': String(kind === what) });
    };
    return [
      element('h2', { 'class': 'who', tabindex: -1,
        text: (order + 1) + ' of ' + stop.tires.length + ' · ' + tire.words + ' (' + tire.short + ')' }),
      element('p', { id: 'should' }),
      element('output', { 'class': 'gauged', id: 'gauged', 'aria-label': 'Figure typed' }),
      element('div', { 'class': 'verdict', id: 'verdict', role: 'status' }),
      element('div', { 'class': 'row' }, [pressed('reading', 'It reads'), pressed('set', 'I set it to'),
        button('Leave round', function () { take(); keep(); order = -1; draw(true); })]),
      element('div', { 'class': 'keys' }, ['7', '8', '9', '4', '5', '6', '1', '2', '3', '.', '0', '⌫']
        .map(function (key) {
          return button(key, function () { press(key); },
            { 'aria-label': key === '⌫' ? 'Take back' : key === '.' ? 'Point' : false });
        }).concat([
          button('Before', function () { take(); keep(); to(Math.max(0, order - 1)); },
            { 'class': 'side', disabled: order === 0 }),
          button('Next', next, { 'class': 'go', id: 'next' })
        ]))
    ];
  }

  function backView() {
    var area = element('textarea', { 'class': 'data', readonly: true });
    area.value = sent();
    var said = element('p', { role: 'status' });
    var file = URL.createObjectURL(new Blob([area.value], { type: 'application/json' }));
    function copied(ok) {
      said.textContent = ok ? 'Copied.' : 'Not copied: hold the text and choose copy.';
    }
    function copy() {
      area.select();
      if (navigator.clipboard && navigator.clipboard.writeText) {
        navigator.clipboard.writeText(area.value).then(function () { copied(true); }, function () {
          copied(document.execCommand('copy'));
        });
      } else {
        copied(document.execCommand('copy'));
      }
    }
    return [
      element('h2', { text: 'Send back', tabindex: -1 }),
      para(entries.length === 0 ? 'Nothing was typed yet.' : entries.length
        + (entries.length === 1 ? ' thing was' : ' things were') + ' typed. Save them as a file, or copy the text; the program takes in either,'
        + ' each thing once.'),
      kept ? null : para('This browser does not keep what is typed when it is closed: send it back'
        + ' first.', 'caution'),
      element('div', { 'class': 'row' }, [
        button('Copy', copy),
        element('a', { 'class': 'press', href: file, download: 'dawngauge-round.json', text: 'Save as a file' })
      ]),
      said,
      element('label', { text: 'What goes back' }, [area]),
      entries.length === 0 ? null : element('details', {}, [
        element('summary', { text: 'Forget what was typed' }),
        para('Only once the program has taken it in.'),
        button('Forget all of it', function () { entries = []; round = null; keep(); })
      ])
    ];
  }

  function draw(moved) {
    var parts = view === 'stops' ? stopsView()
      : view === 'round' ? (round && order >= 0 ? tireView() : beginView())
      : view === 'back' ? backView() : [];
    app.textContent = '';
    parts.forEach(function (part) { if (part) { app.appendChild(part); } });
    sections.forEach(function (section, i) {
      section.hidden = view !== 'stops' || i !== current;
    });
    flat.hidden = view !== 'flat';
    var typing = view === 'round' && round && order >= 0 && stopNow().tires[order];
    document.body.className = typing ? 'typing' : view === 'stops' ? '' : 'inner';
    Array.prototype.forEach.call(bar.children, function (each) {
      var name = each.getAttribute('data-view');
      each.setAttribute('aria-current', name === view ? 'page' : 'false');
      if (name === 'back') {
        each.textContent = words.back + (entries.length ? ' (' + entries.length + ')' : '');
      }
    });
    if (typing) { show(); }
    if (moved) {
      window.scrollTo(0, 0);
      var head = app.querySelector('h2') || app;
      head.focus({ preventScroll: true });
    }
  }

  var bar = element('nav', { 'aria-label': 'Parts of the page' }, Object.keys(words).map(function (each) {
    return button(words[each], function () { go(each); }, { 'data-view': each });
  }));
  document.body.appendChild(bar);
  document.addEventListener('keydown', function (event) {
    var field = /^(INPUT|SELECT|TEXTAREA)$/.test(event.target.tagName);
    if (view !== 'round' || order < 0 || field || !stopNow().tires[order]) { return; }
    if (/^[0-9.]$/.test(event.key)) { press(event.key); }
    else if (event.key === 'Backspace') { press('⌫'); }
    else if (event.key === 'Enter' && event.target.tagName !== 'BUTTON') { next(); }
  });

  var now = clockNow();
  data.stops.forEach(function (stop, i) { if (now >= stop.from) { current = i; } });
  app.hidden = false;
  draw(false);
  // For whoever checks the page against the program.
  window.dawngauge = { data: data, lookUp: lookUp, sent: sent,
    local: local, minuteAt: minuteAt };
})();
