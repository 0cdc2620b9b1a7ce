@echo off
rem SPDX-License-Identifier: Apache-2.0
rem Runs the ringleaf.jar that lies beside this file. Its classes come from the archive beside it if archive and jar have
rem the sizes that the build noted here; otherwise Java reads the jar, and only starts later.
setlocal
set "java=java"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java"
set "jar=%~dp0ringleaf.jar"
set "archive=%~dp0ringleaf.jsa"
set options=-XX:+IgnoreUnrecognizedVMOptions -XX:-UsePerfData
rem All but these end before Java's second compiler has paid for itself.
if not "%~1"=="explore" if not "%~1"=="preview" set options=%options% -XX:TieredStopAtLevel=1
rem Java looks at the archive's check sums too: it may be of the right size and damaged all the same.
for %%J in ("%jar%") do for %%A in ("%archive%") do if "%%~zJ %%~zA"=="@jar@ @archive@" set options=%options% -XX:+VerifySharedSpaces "-XX:SharedArchiveFile=%archive%"
"%java%" %options% -jar "%jar%" %*
