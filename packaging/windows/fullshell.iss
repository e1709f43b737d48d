; The set-up program of Windows, for one user, without administrator rights; bundle.py calls
;   ISCC /DVersion=... /DSource=<folder of the bundle> /DMutex=... /DRunsOn=... /O<where> /F<name>
; Written for Inno Setup 6.3 or later.

#ifndef Version
  #error Give the version: /DVersion=1.2.3
#endif
#ifndef Source
  #error Give the folder of the bundle: /DSource=C:\...\dist\fullshell
#endif
#ifndef Mutex
  #error Give the name that tells that the program is open: /DMutex=... of bundle_start.py
#endif
#ifndef RunsOn
  #error Give the machines that the bundle runs on: /DRunsOn=x64compatible or arm64
#endif
#define Name "Fullshell"
; Names of this program alone in the registry.
#define PlaceType "Fullshell.Place"

[Setup]
; The same in every release, so that a newer one goes over an older one.
AppId={{6B0D6C52-3F1B-4E0B-9C55-8A1E0F7C2D94}
AppName={#Name}
AppVersion={#Version}
AppVerName={#Name} {#Version}
VersionInfoVersion={#Version}
PrivilegesRequired=lowest
DefaultDirName={autopf}\{#Name}
DisableProgramGroupPage=yes
DisableDirPage=auto
ArchitecturesAllowed={#RunsOn}
ArchitecturesInstallIn64BitMode={#RunsOn}
MinVersion=10.0.17763
ChangesAssociations=yes
; Neither over it nor away while it is open; the uninstaller asks for nothing else.
AppMutex={#Mutex}
UninstallDisplayIcon={app}\fullshellw.exe
UninstallDisplayName={#Name}
Compression=lzma2
SolidCompression=yes
WizardStyle=modern

[InstallDelete]
; What an older release had and the new one has not must not be found by the new one.
Type: filesandordirs; Name: "{app}\_internal"

[Files]
Source: "{#Source}\*"; DestDir: "{app}"; Flags: ignoreversion recursesubdirs createallsubdirs

[Icons]
Name: "{autoprograms}\{#Name}"; Filename: "{app}\fullshellw.exe"; Comment: "Plan crab trapping trips"

[Registry]
; The ending of our own opens by a double click.
Root: HKCU; Subkey: "Software\Classes\.fullshell"; ValueType: string; ValueName: ""; ValueData: "{#PlaceType}"; Flags: uninsdeletevalue uninsdeletekeyifempty
Root: HKCU; Subkey: "Software\Classes\.fullshell\OpenWithProgids"; ValueType: string; ValueName: "{#PlaceType}"; ValueData: ""; Flags: uninsdeletevalue uninsdeletekeyifempty
Root: HKCU; Subkey: "Software\Classes\{#PlaceType}"; ValueType: string; ValueName: ""; ValueData: "Fullshell place"; Flags: uninsdeletekey
Root: HKCU; Subkey: "Software\Classes\{#PlaceType}\DefaultIcon"; ValueType: string; ValueName: ""; ValueData: "{app}\fullshellw.exe,0"
Root: HKCU; Subkey: "Software\Classes\{#PlaceType}\shell\open\command"; ValueType: string; ValueName: ""; ValueData: """{app}\fullshellw.exe"" ""%1"""
; .toml belongs to many programs: offered under "Open with", never taken.
Root: HKCU; Subkey: "Software\Classes\.toml\OpenWithProgids"; ValueType: string; ValueName: "{#PlaceType}"; ValueData: ""; Flags: uninsdeletevalue uninsdeletekeyifempty

[Run]
Filename: "{app}\fullshellw.exe"; Description: "Open {#Name}"; Flags: nowait postinstall skipifsilent

[Code]
// Nothing of the user's lies in {app}; say where it is, so that nobody thinks it lost.
function UsersFolder(): String;
begin
  Result := GetEnv('FULLSHELL_HOME');
  if Result = '' then
    Result := ExpandConstant('{localappdata}\fullshell');
end;

procedure CurUninstallStepChanged(CurUninstallStep: TUninstallStep);
begin
  if (CurUninstallStep = usPostUninstall) and not UninstallSilent then
    MsgBox('Fullshell is removed. Your log, places and settings stay in ' +
      UsersFolder() + '.' + #13#10 +
      'Delete that folder yourself if you want them gone, too.', mbInformation, MB_OK);
end;
