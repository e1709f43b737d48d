"""The guide inside the program: the right page, whole, offline, and reached from everywhere."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterator
from typing import Any

import pytest
from PySide6.QtCore import Qt, QUrl
from PySide6.QtGui import QAction, QTextDocument, QTextFormat
from PySide6.QtWidgets import QApplication, QPushButton

from planner.assets import guide
from planner.ui import theme
from planner.ui.guide.help_pages import (
    CONTENTS,
    PAGES,
    anchor,
    contents,
    pages,
    pages_with,
    path_of,
)
from planner.ui.guide.help_window import HelpWindow
from planner.ui.hauls.backups_dialog import BackupsDialog
from planner.ui.languages import use
from planner.ui.trouble.checkup_dialog import CheckupDialog
from planner.ui.window import VIEWS, MainWindow
from planner.ui.workbench import Workbench
from planner.words import say, speak
from tests.ui.conftest import activate

PATIENCE_MS = 30_000


@pytest.fixture(params=["en", "es"])
def language(request: pytest.FixtureRequest) -> Iterator[str]:
    """Each language that has a guide; what a test then makes is in it."""
    use(request.param)
    yield request.param
    speak(None)


@pytest.fixture
def window(empty_bench: Workbench, qtbot: Any) -> Iterator[MainWindow]:
    """The whole window, with nothing open."""
    made = MainWindow(empty_bench)
    qtbot.addWidget(made)
    made.show()
    activate(qtbot, made)
    yield made
    made.help.close()


@pytest.fixture
def shown(window: MainWindow, qtbot: Any) -> HelpWindow:
    """The guide at its first page."""
    window.help.contents()
    made = window.help.guide
    assert made is not None
    qtbot.waitUntil(made.isActiveWindow, timeout=PATIENCE_MS)
    return made


# -- the window ----------------------------------------------------------------------------------


@pytest.mark.parametrize("view", [name for name, *_ in VIEWS])
def test_f1_opens_the_page_of_the_view(
    language: str, window: MainWindow, qtbot: Any, view: Any
) -> None:
    """Wherever the user is, one key says what is on the screen, in the language of the window."""
    window.state.change(view=view)
    qtbot.keyClick(window, Qt.Key.Key_F1)
    made = window.help.guide
    assert made is not None
    assert made.isVisible()
    assert made.page.name == PAGES[view]
    label = say(window.label_of(view))
    assert made.tree.currentItem().text(0) == label
    assert made.page.toPlainText().startswith(label)
    assert made.windowTitle() == say("Guide - Fullshell")


def test_f1_is_heard_in_a_dialog(language: str, window: MainWindow, qtbot: Any) -> None:
    """A dialog that keeps the window waiting keeps nobody from reading; once more, and it is
    there again."""
    window.state.change(view="hauls")
    window.show_backups()
    (dialog,) = window.findChildren(BackupsDialog)
    activate(qtbot, dialog)
    assert dialog.isModal()
    for _ in range(2):
        qtbot.keyClick(dialog.focusWidget() or dialog, Qt.Key.Key_F1)
        made = window.help.guide
        assert made is not None
        assert made.isVisible()
        assert made.page.toPlainText().startswith(say("Log hauls"))
        made.close()
        activate(qtbot, dialog)
    dialog.close()


@pytest.mark.parametrize("language", ["es"], indirect=True)
def test_a_page_without_a_translation_is_in_english_and_leads_back(
    language: str, shown: HelpWindow, qtbot: Any
) -> None:
    """Where a language lacks a page its reader has the English one, and from there on the pages
    that are in their language, by link and by the words they look for."""
    page = "fullness-model.md"
    assert not guide(language, page).exists()
    shown.open_page(page)
    assert shown.tree.currentItem().data(0, Qt.ItemDataRole.UserRole) == page
    assert shown.page.source().toLocalFile() == str(guide(page))
    shown.page.setSource(QUrl("questions.md"))
    assert shown.page.source().toLocalFile() == str(guide(language, "questions.md"))
    qtbot.mouseClick(shown.back, Qt.MouseButton.LeftButton)
    assert shown.page.source().toLocalFile() == str(guide(page))
    shown.words.setText("pleamar")
    qtbot.keyClick(shown.words, Qt.Key.Key_Return)
    assert shown.page.textCursor().selectedText().casefold() == "pleamar"


def test_every_page_and_picture_is_read_from_the_disk(language: str, shown: HelpWindow) -> None:
    """Each page has its words and each picture its points, with the network refused."""
    for page in pages():
        shown.open_page(page)
        assert shown.page.name == page
        assert len(shown.page.toPlainText()) > 200
        wanted = path_of(page).read_text(encoding="utf-8").count("![")
        assert len(shown.page._pictures) == wanted
        for name in shown.page._pictures:
            kind = QTextDocument.ResourceType.ImageResource.value
            image = shown.page.document().resource(kind, QUrl(name))
            assert not image.isNull()
            assert image.width() / image.devicePixelRatio() <= shown.page.viewport().width()


def test_under_a_picture_is_no_hole(shown: HelpWindow) -> None:
    """A picture takes its own height and a little room; the words about it follow at once."""
    shown.open_page("weigh-evidence.md")
    layout = shown.page.document().documentLayout()
    block, pictures = shown.page.document().begin(), 0
    while block.isValid():
        if "\ufffc" in block.text():
            (run, *_) = block.textFormats()
            name = QUrl(run.format.toImageFormat().name())
            kind = QTextDocument.ResourceType.ImageResource.value
            image = shown.page.document().resource(kind, name)
            at, below = map(layout.blockBoundingRect, (block, block.next()))
            room = below.top() - at.top()
            assert room < image.height() / image.devicePixelRatio() + 40
            pictures += 1
        block = block.next()
    assert pictures == len(shown.page._pictures)


def test_a_question_is_opened_at_its_heading(language: str, shown: HelpWindow) -> None:
    """A question far down a long page is in sight, and marked in the contents."""
    asked = next(group for group in contents() if "#" in group.entries[0].page)
    entry = asked.entries[2]
    shown.open_page(entry.page)
    assert shown.page.textCursor().block().text() == entry.text
    assert 0 <= shown.page.cursorRect().top() < shown.page.viewport().height() // 3
    assert shown.page.verticalScrollBar().value() > 0
    assert shown.page.viewport().rect().contains(shown.page.cursorRect().center())
    assert shown.tree.currentItem().text(0) == entry.text


def test_every_link_of_every_page_is_followed_to_its_page_and_heading(
    language: str, shown: HelpWindow
) -> None:
    """From where it stands, in the language of the window: a heading with code or stress in it
    is found by the same name as on the web."""
    followed = Counter[str]()
    for page in pages():
        for link in re.findall(r"(?<!!)\[[^\]]+\]\(([^)\s]+)\)", path_of(page).read_text("utf-8")):
            shown.open_page(page)
            shown.page.setSource(QUrl(link))
            name, _, heading = link.rpartition("/")[2].partition("#")
            assert not shown.said.isVisible(), (page, link)
            assert shown.page.name == (name or page), (page, link)
            assert shown.page.source().toLocalFile() == str(path_of(name or page))
            if heading:
                assert anchor(shown.page.textCursor().block().text()) == heading, (page, link)
            followed["heading" if heading else "page"] += 1
    assert min(followed["heading"], followed["page"]) > 10


def test_back_and_forward_by_button_and_key(shown: HelpWindow, qtbot: Any) -> None:
    """As in any pages that lead to each other."""
    assert not shown.back.isEnabled()
    shown.open_page("load-up.md")
    shown.open_page("log-hauls.md")
    qtbot.mouseClick(shown.back, Qt.MouseButton.LeftButton)
    assert shown.page.name == "load-up.md"
    qtbot.keyClick(shown, Qt.Key.Key_Right, Qt.KeyboardModifier.AltModifier)
    assert shown.page.name == "log-hauls.md"
    qtbot.keyClick(shown, Qt.Key.Key_Left, Qt.KeyboardModifier.AltModifier)
    qtbot.keyClick(shown, Qt.Key.Key_Left, Qt.KeyboardModifier.AltModifier)
    assert shown.page.name == CONTENTS


def test_the_contents_are_gone_through_by_keys(shown: HelpWindow, qtbot: Any) -> None:
    """Down and Enter open a page; a heading opens nothing."""
    first = shown.tree.topLevelItem(0).child(0)
    shown.tree.setCurrentItem(first)
    shown.tree.setFocus()
    qtbot.keyClick(shown.tree, Qt.Key.Key_Down)
    qtbot.keyClick(shown.tree, Qt.Key.Key_Return)
    assert shown.page.name == "load-up.md"


def test_finding_goes_through_the_whole_guide(shown: HelpWindow, qtbot: Any) -> None:
    """From this page on to the next that has the words, round to the start, and back."""
    words = "saturday"
    with_it = pages_with(words, CONTENTS)
    assert with_it
    qtbot.keyClick(shown, Qt.Key.Key_F, Qt.KeyboardModifier.ControlModifier)
    qtbot.waitUntil(shown.words.hasFocus, timeout=PATIENCE_MS)
    qtbot.keyClicks(shown.words, words)
    met = []
    for _ in range(12):
        qtbot.keyClick(shown.words, Qt.Key.Key_Return)
        assert shown.page.textCursor().selectedText().casefold() == words
        met.append(shown.page.name)
    assert set(met) >= {CONTENTS, *with_it}
    qtbot.keyClick(shown, Qt.Key.Key_F3, Qt.KeyboardModifier.ShiftModifier)
    assert shown.page.textCursor().selectedText().casefold() == words
    shown.words.setText("harpsichord")
    qtbot.keyClick(shown.words, Qt.Key.Key_Return)
    assert "nowhere" in shown.said.text()
    assert shown.said.isVisible()


def test_a_link_that_leads_outside_is_not_followed(shown: HelpWindow) -> None:
    """Nothing is opened, nothing is fetched; the reader is told."""
    before = shown.page.name
    for address in ("https://example.invalid/x.md", "file:///etc/hosts", "../README.md"):
        shown.page.setSource(QUrl(address))
        assert shown.page.name == before
        assert "outside the guide" in shown.said.text()


def test_both_themes_and_large_letters(shown: HelpWindow, qtbot: Any) -> None:
    """Text and links follow the colours at once, and the place on the page is kept."""
    shown.open_page("questions.md#does-the-moon-matter")
    at = shown.page.verticalScrollBar().value()
    shown.state.change(theme="dark")
    app = QApplication.instance()
    assert isinstance(app, QApplication)
    theme.apply(app, "dark")
    shown.page.read_again()
    assert abs(shown.page.verticalScrollBar().value() - at) < 40
    shown.open_page(CONTENTS)
    block = shown.page.document().begin()
    links = set()
    while block.isValid():
        for run in block.textFormats():
            if run.format.isAnchor() and run.format.hasProperty(
                QTextFormat.Property.ForegroundBrush
            ):
                links.add(run.format.foreground().color().name())
        block = block.next()
    assert links == {theme.DARK.accent}


def test_everything_can_be_reached_and_named(shown: HelpWindow) -> None:
    """For the keyboard and a screen reader."""
    for made in shown.findChildren(QPushButton):
        assert made.text()
        assert made.toolTip()
        assert made.focusPolicy() & Qt.FocusPolicy.TabFocus
    assert shown.tree.accessibleName()
    assert shown.page.accessibleName()
    assert shown.words.accessibleName()


def test_escape_closes_the_guide_and_f1_brings_it_back(
    window: MainWindow, shown: HelpWindow, qtbot: Any
) -> None:
    """One window of it, closed with the main window at the latest."""
    qtbot.keyClick(shown, Qt.Key.Key_Escape)
    assert not shown.isVisible()
    activate(qtbot, window)
    qtbot.keyClick(window, Qt.Key.Key_F1)
    assert window.help.guide is shown
    assert shown.isVisible()
    window.close()
    assert not shown.isVisible()
    assert window.help.guide is None


def test_the_check_of_the_installation_is_in_the_menu(
    window: MainWindow, qtbot: Any, settle: Any, monkeypatch: Any
) -> None:
    """Whoever has no terminal sees the findings too; what is copied holds no folder."""
    from planner.ui.trouble.checkup.finding import wrong

    found = [wrong("disk", "3 MB free", "make room", "/home/someone")]
    monkeypatch.setattr("planner.ui.trouble.checkup_dialog.examine", lambda: found)
    action = next(a for a in window.findChildren(QAction) if "nstallation" in a.text())
    action.trigger()
    (dialog,) = window.findChildren(CheckupDialog)
    settle(window.bench)
    assert "1 of 1 things are wrong" in dialog.verdict.text()
    assert "make room" in dialog.findings.toPlainText()
    assert "/home/someone" in dialog.findings.toPlainText()
    qtbot.mouseClick(dialog.copy, Qt.MouseButton.LeftButton)
    assert "3 MB free" in QApplication.clipboard().text()
    assert "someone" not in QApplication.clipboard().text()
    dialog.close()
