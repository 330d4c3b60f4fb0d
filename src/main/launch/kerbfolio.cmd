@echo off
rem Starts Kerbfolio with what pays for a program that runs one job and ends: the quick compiler only, the simple
rem collector, and the archive of loaded classes the build made. Any other Java than the build's runs without the archive.
setlocal
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java"
"%JAVA%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xmn64m -Xshare:auto "-XX:SharedArchiveFile=%~dp0kerbfolio.jsa" -Xlog:disable -jar "%~dp0kerbfolio.jar" %*
exit /b %ERRORLEVEL%
