@echo off
rem Starts strikeoff.jar beside this script, or of the image around it. Not tried yet on any Windows: please tell what happens.
rem JAVA_HOME chooses the JDK, STRIKEOFF_OPTS adds options for it.
setlocal
set "LIB=%~dp0."
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java"
if exist "%~dp0..\runtime\bin\java.exe" (
  set "LIB=%~dp0..\lib"
  set "JAVA=%~dp0..\runtime\bin\java"
)
"%JAVA%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC %STRIKEOFF_OPTS% -cp "%LIB%\strikeoff.jar" strikeoff.cli.Main %*
exit /b %ERRORLEVEL%
