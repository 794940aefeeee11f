@echo off
rem Starts Dawngauge from its own folder, wherever that lies.
setlocal
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java"
"%JAVA%" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -cp "%~dp0..\lib\*" dawngauge.Main %*
