#!/bin/sh
# Let the desktop read again what it knows of programs, files and icons in a data folder. Where a
# tool is missing the desktop finds out by itself at the next login.
data=$1
if command -v update-mime-database >/dev/null 2>&1 && [ -d "$data/mime/packages" ]; then
    update-mime-database "$data/mime" >/dev/null 2>&1 || true
fi
if command -v update-desktop-database >/dev/null 2>&1 && [ -d "$data/applications" ]; then
    update-desktop-database "$data/applications" >/dev/null 2>&1 || true
fi
if [ -d "$data/icons/hicolor" ]; then
    touch "$data/icons/hicolor" || true
fi
