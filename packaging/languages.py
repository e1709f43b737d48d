"""Gathers what the program says into the language files, and makes of them what it reads.

    .venv/bin/python packaging/languages.py

Every `say("...")` and `counted(n, "...")` of the package goes into each `resources/languages/*.ts`;
what is translated stays, what is gone is dropped, what is new is marked unfinished, to be done in
Qt Linguist or any editor. Then the `.qm` beside it is made. A test says when they are behind.
"""

from __future__ import annotations

import ast
import subprocess
import sys
import xml.etree.ElementTree as ElementTree
from collections.abc import Iterator
from pathlib import Path
from typing import Final

ROOT: Final = Path(__file__).parents[1]
FOLDER: Final = ROOT / "resources" / "languages"
CONTEXT: Final = "Fullshell"

Text = tuple[str, str]
"""A text and its sense, "" for most."""


def main() -> int:
    """Renew every language file; return 1 when a text is still to be translated."""
    wanted = gathered()
    behind = 0
    for path in sorted(FOLDER.glob("*.ts")):
        done = translations(path)
        write(path, wanted, done)
        missing = [text for text in wanted if not done.get(text)]
        make(path)
        print(f"{path.name}: {len(wanted)} texts, {len(missing)} to be translated")
        behind += len(missing)
    return 1 if behind else 0


def gathered() -> dict[Text, str]:
    """Return every text that the program says, with the file that says it first, in order."""
    sys.path.insert(0, str(ROOT))
    from planner.handouts.tally_page import page_texts
    from planner.ui.languages import ITS_NAME, PERCENT
    from planner.words import names_of_days_and_months

    found = dict.fromkeys((ITS_NAME, PERCENT), "planner/ui/languages.py")
    found |= dict.fromkeys(names_of_days_and_months(), "planner/words.py")
    found |= dict.fromkeys(((text, "") for text in page_texts()), "resources/deck/tally-page.html")
    for path in sorted(ROOT.glob("planner/**/*.py")):
        if path.name == "words.py":
            continue
        where = path.relative_to(ROOT).as_posix()
        for call in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(call, ast.Call) and isinstance(call.func, ast.Name):
                for text in _said(call, where):
                    found.setdefault(text, where)
    return found


def _said(call: ast.Call, where: str) -> Iterator[Text]:
    if not isinstance(call.func, ast.Name) or call.func.id not in ("say", "counted"):
        return
    words = call.args[:1] if call.func.id == "say" else call.args[1:]
    texts = []
    for word in words:
        if not isinstance(word, ast.Constant) or not isinstance(word.value, str):
            raise SystemExit(f"{where}:{call.lineno}: what is said must be written out here")
        texts.append(word.value)
    if call.func.id == "counted" and len(texts) == 1:
        texts.append(f"{texts[0]}s")
    senses = [each.value for each in call.keywords if each.arg == "sense"]
    sense = senses[0].value if senses and isinstance(senses[0], ast.Constant) else ""
    yield from ((text, str(sense)) for text in texts)


def translations(path: Path) -> dict[Text, str]:
    """Return what a language file gives for each text; unfinished ones are left out."""
    done = {}
    for message in ElementTree.parse(path).iter("message"):
        translation = message.find("translation")
        if translation is not None and translation.text and translation.get("type") is None:
            done[message.findtext("source", ""), message.findtext("comment", "")] = translation.text
    return done


def write(path: Path, wanted: dict[Text, str], done: dict[Text, str]) -> None:
    """Write a language file anew: every wanted text, by the file that says it."""
    top = ElementTree.Element("TS", version="2.1", language=path.stem, sourcelanguage="en")
    context = ElementTree.SubElement(top, "context")
    ElementTree.SubElement(context, "name").text = CONTEXT
    for (text, sense), where in wanted.items():
        message = ElementTree.SubElement(context, "message")
        ElementTree.SubElement(message, "location", filename=where)
        ElementTree.SubElement(message, "source").text = text
        if sense:
            ElementTree.SubElement(message, "comment").text = sense
        translation = ElementTree.SubElement(message, "translation")
        translation.text = done.get((text, sense))
        if not translation.text:
            translation.set("type", "unfinished")
    ElementTree.indent(top, " ")
    body = ElementTree.tostring(top, encoding="unicode")
    path.write_text(
        f'<?xml version="1.0" encoding="utf-8"?>\n<!DOCTYPE TS>\n{body}\n', encoding="utf-8"
    )


def make(path: Path) -> None:
    """Make the file that the program reads."""
    import PySide6

    maker = Path(PySide6.__file__).with_name("lrelease")
    made = path.with_suffix(".qm")
    subprocess.run([maker, "-silent", "-nounfinished", path, "-qm", made], check=True)


if __name__ == "__main__":
    sys.exit(main())
