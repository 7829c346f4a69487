@echo off
rem Starts Turnalike from the folder it was unpacked to, by the Java that lies beside it or else by the one this machine has.
setlocal
set "here=%~dp0.."
set "java=%here%\runtime\bin\java.exe"
if exist "%java%" goto found
if not defined JAVA_HOME goto path
rem Whoever set it may have put a path with blanks in quotes.
set "java=%JAVA_HOME:"=%\bin\java.exe"
if not exist "%java%" goto nowhere
goto found
:path
for %%j in (java.exe) do set "java=%%~$PATH:j"
if not defined java goto none

rem What Java is it? Its own file says so at no cost; where there is none, it is asked, from its own folder so that no quotes are needed.
:found
for %%j in ("%java%") do set "home=%%~dpj"
set "major="
if exist "%home%..\release" for /f "usebackq tokens=1,2 delims==." %%k in ("%home%..\release") do if "%%k"=="JAVA_VERSION" set "major=%%l"
if defined major goto told
pushd "%home%"
for /f "tokens=2,3" %%k in ('.\java.exe -version 2^>^&1') do if "%%k"=="version" set "major=%%l"
popd
if not defined major goto dead
:told
set "major=%major:"=%"
for /f "delims=.-+" %%v in ("%major%") do set "major=%%v"
if %major% LSS 17 goto old
set "native="
rem From Java 24 on, the store's native SQLite library would bring warnings; Java 17 does not know the option.
if %major% GEQ 24 set "native=--illegal-native-access=allow"

set "asked=%~1"
if not defined asked set "asked=serve"
set "mode=-XX:TieredStopAtLevel=1"
set "heap="
rem The page serves a shop's devices all day: without a bound for what is new, Java takes hundreds of megabytes before it tidies up.
if "%asked%"=="serve" set "heap=-Xms160m -Xmn96m"
rem A long history is read step by step: what was read need not stay.
for %%c in (keep log undo redo history give check move) do if "%asked%"=="%%c" set "heap=-Xms64m -Xmn40m"
for %%c in (serve match demo plan) do if "%asked%"=="%%c" set "mode="

rem The program writes UTF-8; the window goes back to its own code page afterwards. A German Windows ends that line with a point.
set "page="
for /f "tokens=2 delims=:." %%c in ('chcp') do set "page=%%c"
chcp 65001 > nul
"%java%" -XX:+UseSerialGC %heap% %mode% -Xlog:disable -Xlog:all=error:stderr -Djava.awt.headless=true %native% -cp "%here%\lib\*" turnalike.Main %*
set "code=%ERRORLEVEL%"
if defined page chcp %page% > nul
exit /b %code%

:none
echo turnalike: set-up: no Java found; install one, 17 or later, or name it in JAVA_HOME 1>&2
exit /b 2

:nowhere
echo turnalike: set-up: JAVA_HOME has no Java at "%java%"; let it name one, 17 or later, or unset it 1>&2
exit /b 2

:dead
echo turnalike: set-up: "%java%" does not start; install Java 17 or later 1>&2
exit /b 2

:old
echo turnalike: set-up: "%java%" is Java %major%; install 17 or later, or name one in JAVA_HOME 1>&2
exit /b 2
