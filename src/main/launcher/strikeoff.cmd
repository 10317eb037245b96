@echo off
rem Starts strikeoff.jar beside this script, or of the image around it, as the script beside it does elsewhere. Written by what
rem cmd documents of itself, and not tried yet on any Windows: please tell what happens.
rem JAVA_HOME chooses the JDK, STRIKEOFF_OPTS adds options for it.

rem Without extensions there is no %~dp0, and with delayed expansion a ! in a folder's name would be lost.
setlocal EnableExtensions DisableDelayedExpansion
rem The dot keeps the folder's last backslash from the quote behind it, which it would make a letter of the name.
set "LIB=%~dp0."
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME:"=%\bin\java"
if exist "%~dp0..\runtime\bin\java.exe" (
  set "LIB=%~dp0..\lib"
  set "JAVA=%~dp0..\runtime\bin\java"
)
set "ARCHIVE=-XX:SharedArchiveFile=%LIB%\strikeoff.jsa"
if exist "%LIB%\strikeoff.aot" set "ARCHIVE=-XX:AOTCache=%LIB%\strikeoff.aot"

rem Last of all, so that its exit code is this script's, for if, && and || too.
"%JAVA%" -XX:+IgnoreUnrecognizedVMOptions -XX:+UnlockDiagnosticVMOptions "%ARCHIVE%" -Xlog:disable -XX:ArchiveRelocationMode=0 -XX:-AOTReplayTraining -Djdk.reflect.useNativeAccessorOnly=true -Dslf4j.provider=org.slf4j.nop.NOPServiceProvider -Dslf4j.internal.verbosity=WARN -XX:TieredStopAtLevel=1 -XX:CompileThresholdScaling=2 -XX:+UseSerialGC -XX:InitialRAMPercentage=0.3 -Xmn8m -XX:-UsePerfData %STRIKEOFF_OPTS% -cp "%LIB%\strikeoff.jar" strikeoff.cli.Main %*
