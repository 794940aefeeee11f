@echo off
rem Starts Dawngauge from its own folder, wherever that lies.
setlocal
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java"
"%JAVA%" "@%~dp0..\lib\jvm-options" -cp "%~dp0..\lib\*" dawngauge.Main %*
