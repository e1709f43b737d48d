#!/bin/sh
# Install Fullshell for this user, from the folder that this script lies in. Needs no
# administrator. Run it again to put a newer release over an older one: the log stays.
set -eu
: "${HOME:?is not set; it must name your home folder}"

here=$(CDPATH='' cd -- "$(dirname -- "$0")" && pwd)
data=${XDG_DATA_HOME:-$HOME/.local/share}
target=$HOME/.local/lib/fullshell
commands=$HOME/.local/bin

if [ "$here" = "$target" ]; then
    echo "This is the installed copy. Run install.sh from the folder of a new release." >&2
    exit 1
fi
if [ ! -x "$here/fullshell" ]; then
    echo "There is no program beside this script; unpack the whole archive first." >&2
    exit 1
fi
if [ -e "$target" ] && [ ! -f "$target/uninstall.sh" ]; then
    echo "$target is there and is not Fullshell; move it away first." >&2
    exit 1
fi
if [ -e "$commands/fullshell" ] && [ ! -L "$commands/fullshell" ]; then
    echo "$commands/fullshell is there and is not ours; move it away first." >&2
    exit 1
fi
sh "$here/share/may_go.sh" "$target" || exit 1

# Whole beside the old one first, so that a full disk leaves the old one as it was.
mkdir -p "$(dirname -- "$target")" "$commands"
rm -rf "$target.new"
cp -R -P "$here" "$target.new"
rm -rf "$target"
mv "$target.new" "$target"
ln -sfn "$target/fullshell" "$commands/fullshell"

mkdir -p "$data/applications" "$data/mime/packages"
# The path goes into quotes in the entry; \ " ` $ would end them, % would mean an argument.
case $target in
    *[\\\"\`\$%]*) echo "The menu cannot start a program from $target." >&2 ;;
    *)
        while IFS= read -r line; do
            case $line in
                *@FOLDER@*) printf '%s%s%s\n' "${line%%@FOLDER@*}" "$target" "${line#*@FOLDER@}" ;;
                *) printf '%s\n' "$line" ;;
            esac
        done <"$target/share/fullshell.desktop" >"$data/applications/fullshell.desktop"
        ;;
esac
cp "$target/share/fullshell-place.xml" "$data/mime/packages/fullshell-place.xml"
for icon in "$target"/share/icons/*.png; do
    size=$(basename -- "$icon" .png)
    mkdir -p "$data/icons/hicolor/${size}x$size/apps"
    cp "$icon" "$data/icons/hicolor/${size}x$size/apps/fullshell.png"
done
mkdir -p "$data/icons/hicolor/scalable/apps"
cp "$target/share/icons/fullshell.svg" "$data/icons/hicolor/scalable/apps/fullshell.svg"
sh "$target/share/refresh.sh" "$data"

echo "Fullshell is installed in $target."
case :$PATH: in
    *:"$commands":*) echo "Open it from the menu, or with: fullshell" ;;
    *) echo "Open it from the menu, or with: \"$commands/fullshell\"" ;;
esac
echo "A place file that ends in .fullshell opens by a double click."
echo "To remove it: sh \"$target/uninstall.sh\" (the log stays)"
