package dawngauge.ui;

import dawngauge.ui.common.Texts;
import java.io.File;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.control.Alert;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBar;
import javafx.scene.control.ButtonType;
import javafx.scene.control.Label;
import javafx.scene.control.TextInputDialog;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;
import javafx.stage.Stage;

/** Asks by dialogs. */
final class DialogAsker implements FileAsker {

  /** What is chosen by Enter and by Escape where the other answer would lose something. */
  private static final ButtonType KEEP =
      new ButtonType("Keep the file", ButtonBar.ButtonData.CANCEL_CLOSE);

  private final Stage stage;

  DialogAsker(Stage stage) {
    this.stage = stage;
  }

  @Override
  public Optional<Path> fileToOpen() {
    return Optional.ofNullable(chooser("Open a trip").showOpenDialog(stage)).map(File::toPath);
  }

  @Override
  public Optional<Path> fileToSave(String name) {
    FileChooser chooser = chooser("Save the trip");
    chooser.setInitialFileName(name);
    return Optional.ofNullable(chooser.showSaveDialog(stage)).map(File::toPath);
  }

  @Override
  public Optional<Path> fileToRead(String what, String ending) {
    FileChooser chooser = new FileChooser();
    chooser.setTitle("Open a " + what);
    chooser
        .getExtensionFilters()
        .add(
            new FileChooser.ExtensionFilter(
                what, "*" + ending, "*" + ending.toUpperCase(Locale.ROOT)));
    return Optional.ofNullable(chooser.showOpenDialog(stage)).map(File::toPath);
  }

  @Override
  public Optional<Path> fileToWrite(String what, String name) {
    FileChooser chooser = new FileChooser();
    chooser.setTitle("Write the " + what);
    chooser.setInitialFileName(name);
    String ending = name.substring(name.lastIndexOf('.'));
    chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter(what, "*" + ending));
    return Optional.ofNullable(chooser.showSaveDialog(stage)).map(File::toPath);
  }

  private static FileChooser chooser(String title) {
    FileChooser chooser = new FileChooser();
    chooser.setTitle(title);
    chooser
        .getExtensionFilters()
        .add(new FileChooser.ExtensionFilter("Dawngauge trips", "*.dawngauge"));
    return chooser;
  }

  @Override
  public Leave unsaved(String trip) {
    ButtonType save = new ButtonType("Save", ButtonBar.ButtonData.YES);
    ButtonType drop = new ButtonType("Do not save", ButtonBar.ButtonData.NO);
    ButtonType answer =
        ask(
            "“" + Texts.shortened(trip) + "” has edits that are not saved.",
            save,
            drop,
            ButtonType.CANCEL);
    return answer == save ? Leave.SAVE : answer == drop ? Leave.DROP : Leave.STAY;
  }

  @Override
  public boolean saveWithout(List<String> drafts) {
    ButtonType save = new ButtonType("Save without", ButtonBar.ButtonData.OTHER);
    ButtonType back = new ButtonType("Go back", ButtonBar.ButtonData.CANCEL_CLOSE);
    return ask(
            "This could not be taken and will not be in the file:\n\n" + String.join("\n", drafts),
            save,
            back)
        == save;
  }

  @Override
  public boolean replaceChanged(String file) {
    ButtonType replace = new ButtonType("Replace it", ButtonBar.ButtonData.OTHER);
    return ask(
            "“" + file + "” was changed by another program since it was read here. Replace it?",
            replace,
            KEEP)
        == replace;
  }

  @Override
  public Optional<String> rigName(String offered) {
    TextInputDialog dialog = new TextInputDialog(offered);
    dialog.initOwner(stage);
    dialog.setTitle("Keep this rig");
    dialog.setHeaderText(null);
    dialog.setContentText("Name of the rig");
    return dialog.showAndWait().filter(name -> !name.isBlank());
  }

  @Override
  public Optional<String> agree(String what, List<String> told, String offered, String wrong) {
    ButtonType agree = new ButtonType("I agree", ButtonBar.ButtonData.OK_DONE);
    TextInputDialog dialog = new TextInputDialog(offered);
    dialog.initOwner(stage);
    dialog.setTitle(what);
    dialog.setHeaderText(null);
    Label words = new Label(String.join("\n\n", told));
    words.setWrapText(true);
    words.setPrefWidth(540);
    words.setMinHeight(Region.USE_PREF_SIZE);
    Label name = new Label("Your contact, an e-mail or web address");
    name.setLabelFor(dialog.getEditor());
    Label error = new Label(wrong);
    error.getStyleClass().add("field-error");
    error.setWrapText(true);
    dialog.setGraphic(null);
    dialog.getEditor().setAccessibleText("Your contact");
    VBox content = new VBox(10, words, name, dialog.getEditor(), error);
    content.setPadding(new Insets(16));
    dialog.getDialogPane().setContent(content);
    dialog.getDialogPane().getButtonTypes().setAll(agree, ButtonType.CANCEL);
    dialog.setResultConverter(type -> type == agree ? dialog.getEditor().getText() : null);
    return dialog.showAndWait();
  }

  @Override
  public boolean keepHeat(String told) {
    ButtonType keep = new ButtonType("Keep it", ButtonBar.ButtonData.YES);
    ButtonType drop = new ButtonType("Do not keep it", ButtonBar.ButtonData.CANCEL_CLOSE);
    return ask(told, keep, drop) == keep;
  }

  private ButtonType ask(String text, ButtonType... answers) {
    Alert alert = new Alert(Alert.AlertType.CONFIRMATION, text, answers);
    alert.initOwner(stage);
    alert.setHeaderText(null);
    alert.getDialogPane().setPrefWidth(480);
    boolean yes = Arrays.stream(answers).anyMatch(a -> a.getButtonData().isDefaultButton());
    for (ButtonType answer : answers) {
      Node button = alert.getDialogPane().lookupButton(answer);
      if (!yes && answer.getButtonData().isCancelButton() && button instanceof Button safe) {
        safe.setDefaultButton(true);
      }
    }
    return alert.showAndWait().orElse(ButtonType.CANCEL);
  }
}
