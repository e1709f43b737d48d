#!/bin/sh
# Remove what install.sh put there for this user. The log, the places and the settings stay.
set -eu
: "${HOME:?is not set; it must name your home folder}"

data=${XDG_DATA_HOME:-$HOME/.local/share}
target=$HOME/.local/lib/fullshell
command=$HOME/.local/bin/fullshell
faults=${XDG_STATE_HOME:-$HOME/.local/state}/fullshell

if [ ! -f "$target/uninstall.sh" ]; then
    echo "Fullshell is not installed in $target." >&2
    exit 1
fi
sh "$target/share/may_go.sh" "$target" || exit 1
if [ "$(readlink -- "$command" || true)" = "$target/fullshell" ]; then
    rm -f "$command"
fi
rm -f "$data/applications/fullshell.desktop" "$data/mime/packages/fullshell-place.xml"
rm -f "$data"/icons/hicolor/*/apps/fullshell.png "$data/icons/hicolor/scalable/apps/fullshell.svg"
sh "$target/share/refresh.sh" "$data"
rm -rf "$target"

echo "Fullshell is removed."
echo "Your log, places and settings stay in ${FULLSHELL_HOME:-$data/fullshell}."
echo "Delete that folder yourself if you want them gone, too."
if [ -d "$faults" ]; then
    echo "What was written down of faults stays in $faults."
fi
