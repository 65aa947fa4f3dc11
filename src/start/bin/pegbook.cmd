@echo off
rem Starts Pegbook from the folder this script stands in, wherever it is called from.
setlocal
for %%i in ("%~dp0..") do set "HOME_FOLDER=%%~fi"
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java"
if exist "%HOME_FOLDER%\java\bin\java.exe" set "JAVA=%HOME_FOLDER%\java\bin\java"
rem A short run gains from the quick compiler and the plain collector. PEGBOOK_JAVA_OPTIONS comes
rem last, so that it can say otherwise.
"%JAVA%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xms120m -Xmn18m -XX:MinHeapFreeRatio=15 -XX:MaxHeapFreeRatio=30 -Xshare:auto -Xlog:cds=off -Xlog:cds+dynamic=off "-XX:SharedArchiveFile=%HOME_FOLDER%\lib\pegbook.jsa" -Djava.awt.headless=true -Djdk.console=java.base "-Dpegbook.home=%HOME_FOLDER%" %PEGBOOK_JAVA_OPTIONS% -jar "%HOME_FOLDER%\lib\pegbook.jar" %*
exit /b %ERRORLEVEL%
