"""What the systems are told of place files: their ending, their name, and who opens them.

The ending of our own is for files that a double click opens. A place file may end in .toml too,
but that ending belongs to many programs, so it is offered under "open with" and never taken.
"""

from __future__ import annotations

from typing import Any

ENDING = ".fullshell"
DESCRIPTION = "Fullshell place"
MACOS_IDENTIFIER = "local.fullshell.planner"
_MACOS_TYPE = f"{MACOS_IDENTIFIER}.place"


def macos_plist(version: str) -> dict[str, Any]:
    """Return the entries of Info.plist beyond those that PyInstaller writes itself."""
    return {
        "CFBundleName": "Fullshell",
        "CFBundleDisplayName": "Fullshell",
        "CFBundleVersion": version,
        "LSMinimumSystemVersion": "13.0",  # of Qt 6.11: doc.qt.io/qt-6.11/macos.html
        "LSApplicationCategoryType": "public.app-category.utilities",
        "NSHighResolutionCapable": True,
        "UTExportedTypeDeclarations": [
            {
                "UTTypeIdentifier": _MACOS_TYPE,
                "UTTypeDescription": DESCRIPTION,
                "UTTypeConformsTo": ["public.plain-text"],
                "UTTypeTagSpecification": {"public.filename-extension": [ENDING.lstrip(".")]},
            }
        ],
        "CFBundleDocumentTypes": [
            {
                "CFBundleTypeName": DESCRIPTION,
                "CFBundleTypeRole": "Editor",
                "LSHandlerRank": "Owner",
                "LSItemContentTypes": [_MACOS_TYPE],
            },
            {
                "CFBundleTypeName": "TOML text",
                "CFBundleTypeRole": "Editor",
                "LSHandlerRank": "Alternate",
                "CFBundleTypeExtensions": ["toml"],
            },
        ],
    }
