@echo off
rem Starts Turnalike from the folder it was unpacked to, by the Java that lies beside it or else by the one this machine has.
setlocal
set "here=%~dp0.."
set "home="
set "java="
if exist "%here%\runtime\bin\java.exe" set "home=%here%\runtime"
if not defined home if defined JAVA_HOME set "home=%JAVA_HOME%"
if defined home set "java=%home%\bin\java.exe"
if not defined home for %%j in (java.exe) do set "java=%%~$PATH:j"
if not defined java goto none
if not exist "%java%" goto none

rem What Java is it? Its own file says so; without that file it is left to Java.
for %%j in ("%java%") do set "home=%%~dpj.."
set "major=17"
if exist "%home%\release" for /f "usebackq tokens=1,2 delims==." %%k in ("%home%\release") do if "%%k"=="JAVA_VERSION" set "major=%%l"
set "major=%major:"=%"
for /f "delims=." %%v in ("%major%") do set "major=%%v"
if %major% LSS 17 goto old
set "native="
rem From Java 24 on, the store's native SQLite library would bring warnings; Java 17 does not know the option.
if %major% GEQ 24 set "native=--illegal-native-access=allow"

rem The page serves a shop's devices all day: without a bound for what is new, Java takes hundreds of megabytes before it tidies up.
set "heap="
if "%~1"=="" set "heap=-Xms160m -Xmn96m"
if "%~1"=="serve" set "heap=-Xms160m -Xmn96m"

rem The program writes UTF-8; the window goes back to its own code page afterwards.
set "page="
for /f "tokens=2 delims=:" %%c in ('chcp') do set "page=%%c"
chcp 65001 > nul
"%java%" -XX:+UseSerialGC %heap% -Xlog:disable -Xlog:all=error:stderr -Djava.awt.headless=true %native% -cp "%here%\lib\*" turnalike.Main %*
set "code=%ERRORLEVEL%"
if defined page chcp %page% > nul
exit /b %code%

:none
echo turnalike: set-up: no Java found; install one, 17 or later, or name it in JAVA_HOME 1>&2
exit /b 2

:old
echo turnalike: set-up: %java% is Java %major%; install 17 or later, or name one in JAVA_HOME 1>&2
exit /b 2
