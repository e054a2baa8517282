@echo off
rem Starts Perkilo; see the file "perkilo" beside this one, which does the same elsewhere, and from Java 24 on archives linked classes.
setlocal
set "jar=%~dp0..\target\perkilo.jar"
if not exist "%jar%" (
    echo perkilo.jar is not built yet; run: mvn package -Dmaven.test.skip 1>&2
    exit /b 4
)
set "java=java"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java"

set "kind=cost"
set "compiler=-XX:TieredStopAtLevel=1"
if /i "%~1"=="order" set "kind=order" & set "compiler="
if /i "%~1"=="swap" set "kind=swap" & set "compiler="
set "options=%compiler% -XX:+UseSerialGC -Xshare:auto -Xlog:disable %PERKILO_JAVA_OPTIONS%"

rem Java itself ignores an archive that does not fit it or the jar; the name only says when to make a new one
for %%F in ("%jar%") do set "state=%%~zF %%~tF"
set "state=%state:/=-%"
set "state=%state::=-%"
set "state=%state: =-%"
set "cache=%LOCALAPPDATA%\perkilo"
set "archive=%cache%\%kind%-%state%.jsa"
if exist "%archive%" (
    "%java%" %options% "-XX:SharedArchiveFile=%archive%" -jar "%jar%" %*
    exit /b
)
if /i not "%~1"=="%kind%" goto plain
if not exist "%cache%" mkdir "%cache%" 2>nul
if not exist "%cache%" goto plain
set "new=%archive%.%RANDOM%%RANDOM%"
"%java%" %options% "-XX:DumpLoadedClassList=%new%.list" -jar "%jar%" %*
set "status=%errorlevel%"
if not "%status%"=="0" goto done
"%java%" -Xlog:disable %PERKILO_JAVA_OPTIONS% -Xshare:dump "-XX:SharedClassListFile=%new%.list" "-XX:SharedArchiveFile=%new%" -cp "%jar%" >nul 2>nul
if exist "%new%" move /y "%new%" "%archive%" >nul 2>nul

:done
if exist "%new%" del /f /q "%new%" 2>nul
if exist "%new%.list" del /f /q "%new%.list" 2>nul
exit /b %status%

:plain
"%java%" %options% -jar "%jar%" %*
exit /b
