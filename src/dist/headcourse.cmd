@echo off
rem Starts headcourse with the Java that came with it.
rem
rem The archive of loaded classes was made when the package was, for names of files as seen from lib;
rem so the program runs there, and is told which folder names are meant in. JAVA_OPTS is passed on.
setlocal
set "FOLDER=%CD%"
cd /d "%~dp0..\lib" || exit /b 3
runtime\bin\java -Xlog:disable -Xlog:all=error:stderr -XX:SharedArchiveFile=headcourse.classes ^
  -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Djava.awt.headless=true %JAVA_OPTS% ^
  "-Dheadcourse.folder=%FOLDER%" -jar headcourse.jar %*
exit /b %ERRORLEVEL%
