@echo off
rem Starts headcourse from the jar beside this file.
rem
rem The first drawing leaves an archive of the classes that it loaded in the user's cache folder, so
rem that later runs start in half the time. Where it can't be made or no longer fits, the program
rem runs without. JAVA_OPTS is passed on to Java.
setlocal
set "JAR=%~dp0headcourse.jar"
set "JAVA=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "JAVA=%JAVA_HOME%\bin\java.exe"
if not exist "%JAR%" (
  echo headcourse: %JAR% is missing; it belongs beside this file 1>&2
  exit /b 3
)
"%JAVA%" -version >nul 2>nul
if errorlevel 1 (
  echo headcourse: there is no Java here; install a JDK or JRE, 17 or newer 1>&2
  exit /b 3
)
set "CACHE=%LOCALAPPDATA%\headcourse"
if not defined LOCALAPPDATA set "CACHE=%TEMP%\headcourse"
if not exist "%CACHE%" mkdir "%CACHE%" 2>nul
for %%F in ("%JAR%") do set "STAMP=%%~zF-%%~tF"
set "STAMP=%STAMP:/=%"
set "STAMP=%STAMP::=%"
set "STAMP=%STAMP: =%"
set "STAMP=%STAMP:.=%"
set "ARCHIVE=%CACHE%\%STAMP%.classes"
set "QUIET=-Xlog:disable -Xlog:all=error:stderr"
set "ARCHIVING="
if exist "%ARCHIVE%" (
  set ARCHIVING=%QUIET% "-XX:SharedArchiveFile=%ARCHIVE%"
) else if /i "%~1"=="draw" (
  set ARCHIVING=%QUIET% "-XX:ArchiveClassesAtExit=%ARCHIVE%"
)
rem The heap grows with what is in it, by a seventh at a time, not with the machine's memory.
set "HEAP=-Xms64m -XX:MaxNewSize=48m -XX:MinHeapFreeRatio=15 -XX:MaxHeapFreeRatio=35"
"%JAVA%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC %HEAP% %ARCHIVING% %JAVA_OPTS% -jar "%JAR%" %*
exit /b %ERRORLEVEL%
