"""Weighing evidence: what the window says of a log, and that it says no more."""

from __future__ import annotations

import csv
import math
import re
from collections.abc import Iterator
from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from pathlib import Path
from typing import Any
from zoneinfo import ZoneInfo

import ephem
import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import QPointF
from PySide6.QtWidgets import QLabel, QPushButton, QScrollArea, QWidget

from planner import molt
from planner.assets import demo_log, demo_place
from planner.estimates import Band, Interval, interval_of_draws
from planner.logbook import Haul, Log, Promise, Trip, TripOutcome
from planner.molt.evidence_types import Cause, Curve, Effect, Evidence, PastForecast, Record
from planner.molt.record import reliability_of
from planner.phrasing import SHORT_MONTHS
from planner.trials import settle_texts
from planner.ui.evidence.curves_row import CurvesRow, curve_rows
from planner.ui.evidence.effects_panel import EffectsPanel
from planner.ui.evidence.evidence_rows import effect_text, record_rows, record_text, score_rows
from planner.ui.evidence.record_panel import RecordPanel
from planner.ui.evidence.trial_rows import groupings, legend_text, weigh_traps
from planner.ui.evidence.trip_chart import mark_size
from planner.ui.evidence.trip_points import (
    MONTHS,
    QUARTERS,
    TripPoint,
    moon_words,
    point_rows,
    trip_points,
)
from planner.ui.evidence.view import EvidenceView
from planner.ui.sources import Source
from planner.ui.state import ViewState
from planner.ui.workbench import Workbench

TODAY = date(2026, 11, 25)
NEW_YORK = ZoneInfo("America/New_York")
BEGIN = datetime(2026, 5, 1, 12, tzinfo=UTC)


def _hauls(trips: int, rates: dict[str, int]) -> list[Haul]:
    """Return made hauls: on each trip every design at every spot, with a fixed catch."""
    return [
        Haul(
            trip=f"t{trip}", place="Sedge Hollow", spot=spot, trap=f"{design}-{spot}",
            design=design, bait="mullet", keepers=keepers + (trip + at) % 2,
            set_at=BEGIN + timedelta(days=7 * trip), judged=10, light=trip % 4,
            hauled_at=BEGIN + timedelta(days=7 * trip, hours=16),
        )
        for trip in range(trips)
        for at, spot in enumerate(("bar", "hole", "bend"))
        for design, keepers in rates.items()
    ]  # fmt: skip


def _view(qtbot: Any, source: Source) -> EvidenceView:
    bench = Workbench(ViewState(today=TODAY, day=TODAY, view="evidence"))
    bench.open(source)
    view = EvidenceView(bench)
    qtbot.addWidget(view)
    view.resize(1100, 700)
    view.show()
    qtbot.waitUntil(lambda: bench.idle, timeout=60_000)
    return view


def _turn_to(view: EvidenceView, words: str) -> None:
    """Turn to a tab, as a click on its words does."""
    names = [view.tabs.tabText(at) for at in range(view.tabs.count())]
    view.tabs.setCurrentIndex(names.index(words))


def _settle(qtbot: Any, view: EvidenceView) -> None:
    qtbot.waitUntil(lambda: view.bench.idle, timeout=60_000)


def _words(widget: QWidget) -> str:
    return "\n".join(label.text() for label in widget.findChildren(QLabel))


@pytest.fixture
def view(qtbot: Any) -> Iterator[EvidenceView]:
    """The demo place with its invented log."""
    made = _view(qtbot, Source(str(demo_place()), log=demo_log()))
    yield made
    made.bench.close()


# -- the view ----------------------------------------------------------------------------------


def test_without_a_log_the_view_leads_to_logging(qtbot: Any) -> None:
    """An empty state says what will be here and offers the step that fills it."""
    view = _view(qtbot, Source(str(demo_place()), keep=False))
    assert not view.tabs.isVisible()
    button = next(b for b in view.findChildren(QPushButton) if b.text() == "Log hauls")
    assert button.isVisible()
    button.click()
    assert view.state.view == "hauls"
    view.bench.close()


def test_the_log_is_counted_and_its_trips_stand_over_the_moon(
    view: EvidenceView, qtbot: Any
) -> None:
    """Every judged trip is a point and a row, under what the model makes of a month or quarter
    of the moon; those not judged are counted, not drawn."""
    _turn_to(view, "Moon and season")
    _settle(qtbot, view)
    outcomes = view.bench.log.outcomes("Sedge Hollow")
    judged = [outcome for outcome in outcomes if outcome.judged]
    assert f"{len(outcomes)} logged trips" in view.basis.text()
    for rows, ticks in ((view.trips.moon_rows, QUARTERS), (view.trips.season_rows, MONTHS)):
        assert rows.rowCount() == len(ticks) + len(judged)
        first = [rows.index(0, column).data() for column in range(rows.columnCount())]
        assert ticks[0][1] in first
        assert re.fullmatch(r"\d+% \(\d+%–\d+%\)", first[3])
        assert first[4].startswith("the model")
    assert f"{len(outcomes) - len(judged)} without" in view.trips.said.text()


def test_pointing_at_a_mark_names_its_trip(view: EvidenceView, qtbot: Any) -> None:
    """A mark that stands out can be asked which trip it was."""
    _turn_to(view, "Moon and season")
    _settle(qtbot, view)
    chart = view.trips.moon
    shown = chart._shown
    assert shown is not None
    trip = shown.trips[0]
    box = chart.box
    chart._point(box.mapViewToScene(QPointF(trip.moon_d, 100 * trip.light.mean)))
    assert view.trips.pointed.text().startswith(trip.name)
    chart._point(QPointF(-500, -500))
    assert view.trips.pointed.text().startswith("Filled marks")


def test_traps_are_compared_by_what_the_user_chooses(view: EvidenceView, qtbot: Any) -> None:
    """Sentence, counts, chart, table and layout all speak of the chosen grouping."""
    _turn_to(view, "Traps compared")
    _settle(qtbot, view)
    panel = view.trials
    assert "counted hauls" in panel.sentence.text()
    assert panel.groups.rowCount() == 3
    assert panel.layout_editor.layouts.layout is not None
    assert len(panel.layout_editor.layouts.layout.placed) == 12
    assert panel.chart.accessibleDescription().count("80% interval") == 3
    panel.by.setCurrentIndex(panel.by.findData("spot"))
    _settle(qtbot, view)
    assert panel.groups.rowCount() == 6
    assert panel.found is not None
    assert panel.found.trial.by == "spot"
    names = {panel.groups.data(panel.groups.index(row, 0)) for row in range(6)}
    assert "deep bend" in names


def test_a_comparison_is_exported(
    view: EvidenceView, qtbot: Any, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The file holds what the screen shows: a table by default, a picture by its ending."""
    from PySide6.QtGui import QImage
    from PySide6.QtWidgets import QFileDialog

    _turn_to(view, "Traps compared")
    _settle(qtbot, view)
    panel = view.trials
    table, picture = tmp_path / "traps.csv", tmp_path / "traps.png"
    for path in (table, picture):
        answer = (str(path), "")
        monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_, answer=answer: answer)
        with qtbot.waitSignal(view.bench.notice, timeout=30_000):
            panel.save.click()
    rows = list(csv.DictReader(table.read_text("utf-8").splitlines()))
    assert panel.found is not None
    assert [row["group"] for row in rows] == [group.name for group in panel.found.trial.groups]
    assert sum(int(row["counted"]) for row in rows) == panel.found.trial.hauls
    assert rows[0]["sentence"] == panel.sentence.text()
    assert float(rows[0]["low_80"]) < float(rows[0]["rate"]) < float(rows[0]["high_80"])
    image = QImage(str(picture))
    assert image.width() >= panel.compared.width()


def test_what_would_settle_it_has_dates(view: EvidenceView, qtbot: Any) -> None:
    """Dates stand beside the hauls until the question is settled, then no more."""
    _turn_to(view, "Traps compared")
    _settle(qtbot, view)
    panel = view.trials
    assert "At your pace that trip ends about" in panel.settle.text()
    view.bench._set_log(Log(tuple(_hauls(12, {"wire": 1, "coated": 6}))))
    _settle(qtbot, view)
    assert "Nothing more is needed" in panel.settle.text()
    assert "pace" not in panel.settle.text()


def test_a_long_log_is_thinned_for_the_picture_only() -> None:
    """Thousands of rings would hide each other: some are drawn, and that is said."""
    hauls = _hauls(150, {"wire": 1, "coated": 5, "gold": 3, "old": 2})
    found = weigh_traps(hauls, "design", "keepers", 1.5, NEW_YORK)
    assert found.thinned
    assert all(len(points) <= 300 for points in found.singles.values())
    assert {min(found.singles["wire"]), max(found.singles["wire"])} == {1, 2}
    assert "some of the hauls" in legend_text(found.trial, found.thinned)
    assert "single hauls" in legend_text(found.trial, False)


def test_a_result_for_an_older_log_is_dropped(view: EvidenceView, qtbot: Any) -> None:
    """What is on screen always belongs to the log that is open."""
    _turn_to(view, "Traps compared")
    view.trials.refresh()
    view.bench._set_log(Log(tuple(_hauls(4, {"wire": 2, "coated": 6}))))
    _settle(qtbot, view)
    assert view.trials.found is not None
    assert {group.name for group in view.trials.found.trial.groups} == {"wire", "coated"}


def test_one_kind_of_trap_is_nothing_to_compare(view: EvidenceView, qtbot: Any) -> None:
    """A log of equal traps, all at one spot, says so instead of failing."""
    _turn_to(view, "Traps compared")
    alike = [replace(haul, spot="bar", trap="") for haul in _hauls(1, {"wire": 2})]
    view.bench._set_log(Log(tuple(alike)))
    _settle(qtbot, view)
    assert "No two kinds" in view.trials.sentence.text()
    assert view.trials.groups.rowCount() == 0


def test_a_chart_turns_into_a_table(view: EvidenceView, qtbot: Any) -> None:
    """Whoever cannot read a picture presses one button, which then leads back to it."""
    _turn_to(view, "Traps compared")
    _settle(qtbot, view)
    button = next(
        b for b in view.trials.findChildren(QPushButton) if "as a table" in b.accessibleName()
    )
    assert view.trials.chart.isVisible()
    button.click()
    assert not view.trials.chart.isVisible()
    assert (button.text(), "as a picture" in button.accessibleName()) == ("As a picture", True)
    button.click()
    assert view.trials.chart.isVisible()
    assert button.text() == "As a table"


# -- what was learned ------------------------------------------------------------------------


def _effect(cause: Cause, mean: float, spread: float, trips: int = 28) -> Effect:
    draws = np.clip(np.linspace(mean - 2 * spread, mean + 2 * spread, 401), 0, 1)
    swing = interval_of_draws(draws)
    return Effect(cause, swing, draws, trips, 21 * trips, half_width=0.1, per_trip=7.0)


def _evidence(trips: int = 28) -> Evidence:
    x = np.linspace(0, 29.5, 60)
    band = Band(0.1 + 0 * x, 0.05 + 0 * x, 0.18 + 0 * x)
    past = tuple(
        PastForecast(f"t{i}", TODAY - timedelta(days=9 * i), Interval(0.1, 0.03, 0.2), 20, i % 5)
        for i in range(trips)
    )
    scores = (0.09, 0.10, 0.11, 0.30, 0.33, 0.36) if past else (math.nan,) * 6
    return Evidence(
        effects=(
            _effect("season", 0.25, 0.05, trips),
            _effect("moon", 0.09, 0.045, trips),
            _effect("runs", 0.04, 0.02, trips),
        ),
        moon=Curve(x, band),
        season=Curve(x * 365 / 29.5, band),
        record=Record(past, reliability_of(past, 25.0), *scores),
        trips=trips,
        crabs=21 * trips,
    )


def test_effects_are_weighed_against_the_users_own_difference(
    view: EvidenceView, qtbot: Any, monkeypatch: pytest.MonkeyPatch
) -> None:
    """What counts as worth caring about is the user's to say, and is remembered in the state."""
    monkeypatch.setattr(molt, "evidence", lambda *_, **__: _evidence())
    view.refresh()
    _settle(qtbot, view)
    assert view.effects.isVisible()
    said = _words(view.effects)
    assert "Season and water: it matters" in said
    assert "Moon: your log cannot tell yet" in said
    assert "Recent trips: most likely not worth caring about" in said
    assert view.effects.rows.data(view.effects.rows.index(1, 3)) == "about 4 in 10"
    view.effects.care.setValue(1)
    assert view.state.care_points == 1
    assert "Moon: it matters" in _words(view.effects)
    assert "makes 1 of 100 or more" in _words(view.effects)


def test_the_record_and_the_bands_come_with_the_effects(
    view: EvidenceView, qtbot: Any, monkeypatch: pytest.MonkeyPatch
) -> None:
    """One learning serves all tabs, and the bands go when the log changes."""
    monkeypatch.setattr(molt, "evidence", lambda *_, **__: _evidence())
    view.refresh()
    _turn_to(view, "How forecasts did")
    _settle(qtbot, view)
    assert "did better than the place's running average and the season alone" in (
        view.record.sentence.text()
    )
    assert view.record.rows.rowCount() == 28
    assert view.record.groups.rowCount() == 5
    assert "in 5 groups" in view.record.chart.accessibleDescription()
    _turn_to(view, "Moon and season")
    _settle(qtbot, view)
    assert view.trips.moon._shown is not None
    assert view.trips.moon._shown.curve is not None
    monkeypatch.setattr(molt, "evidence", lambda *_, **__: None)
    view.refresh()
    _settle(qtbot, view)
    assert view.trips.moon._shown.curve is None


def test_effects_without_a_judged_trip_do_not_pretend_to_come_from_the_log() -> None:
    """The prior is shown as general knowledge, not as the user's evidence."""
    text = effect_text(_effect("moon", 0.09, 0.06, trips=0), 10)
    assert "known in general" in text
    assert "your log cannot tell" not in text


def test_a_cannot_tell_says_what_would_settle_it() -> None:
    """51 more trips are said as about 50: no more digits than the figure is worth."""
    text = effect_text(_effect("moon", 0.09, 0.06), 10)
    assert "After about 50 more trips, spread over the whole moon, it is as likely as not" in text
    assert "settled" not in effect_text(_effect("season", 0.4, 0.02), 10)
    assert "few trips" not in text
    assert "So few trips add little" in effect_text(_effect("moon", 0.09, 0.06, trips=3), 10)


@pytest.mark.parametrize(
    ("log_scores", "said"),
    [
        ((0.30, 0.33, 0.36), "better than the place's running average and the season alone"),
        ((0.30, 0.25, 0.36), "did better than the place's running average, did worse than the"),
        ((0.30, 0.302, 0.298), "did no better than the place's running average and the season"),
    ],
)
def test_the_record_says_so_when_the_model_is_not_better(
    log_scores: tuple[float, float, float], said: str
) -> None:
    """A model that loses to a running average admits it."""
    past = _evidence().record.trips
    record = Record(past, (), 0.1, 0.1, 0.1, *log_scores)
    assert said in record_text(record)
    assert ("Do not lean on it" in record_text(record)) == ("no better" in said or "worse" in said)


def test_few_or_no_past_forecasts_are_no_verdict() -> None:
    """Three trips do not say which forecast is better, and none is no error."""
    assert "too few" in record_text(_evidence(3).record)
    empty = _evidence(0).record
    assert "No past trip" in record_text(empty)
    assert record_rows(empty) == []
    assert score_rows(empty)[0] == ("this model", "", "")


def test_an_empty_record_and_prior_effects_draw(qtbot: Any) -> None:
    """With nothing judged the panels stand, say so, and divide by nothing."""
    record, effects = RecordPanel(), EffectsPanel(ViewState(today=TODAY, day=TODAY))
    for panel in (record, effects):
        qtbot.addWidget(panel)
        panel.show()
    record.show_record(_evidence(0).record)
    effects.show_evidence(_evidence(0))
    assert effects.rows.rowCount() == 3


@pytest.mark.parametrize(
    ("size", "with_curves"), [((940, 500), False), ((1090, 560), False), ((2400, 1260), True)]
)
def test_a_high_page_has_no_empty_half(
    qtbot: Any, size: tuple[int, int], with_curves: bool
) -> None:
    """What the rows leave of a large page, the curves take; a small one stays with the rows."""
    panel = EffectsPanel(ViewState(today=TODAY, day=TODAY))
    qtbot.addWidget(panel)
    panel.resize(*size)
    panel.show()
    panel.show_evidence(_evidence(0))
    qtbot.waitUntil(lambda: (panel.findChild(CurvesRow) is not None) == with_curves)
    bar = panel.findChild(QScrollArea).verticalScrollBar()
    qtbot.waitUntil(lambda: bar.maximum() == 0)
    gap = panel._halves.height() - panel._halves.heightForWidth(panel._halves.width())
    assert gap <= 2  # the cards stand together, whatever is left below them
    if with_curves:
        foot = panel.curves.mapTo(panel, panel.curves.rect().bottomLeft()).y()
        assert foot > 0.97 * panel.height()
        season, moon = (card.chart.box.viewRange()[1] for card in
                        (panel.curves.season, panel.curves.moon))  # fmt: skip
        assert season == moon  # one scale: what matters less swings less


def test_the_curves_as_a_table_say_what_is_drawn() -> None:
    """A row a tick, each with the band at that very day."""
    days = np.arange(0.0, 366.0)
    band = Band(days / 1000, days / 2000, days / 500)
    rows = dict(curve_rows(Curve(days, band), MONTHS))
    assert list(rows) == list(SHORT_MONTHS)
    assert rows["Jan"] == "0 (0–0)"
    assert rows["Jul"] == "18 (9–36)"  # day 181


@given(st.lists(st.floats(0, 1), min_size=1), st.floats(0, 1), st.floats(0, 1))
def test_a_larger_difference_is_never_more_likely(
    draws: list[float], one: float, other: float
) -> None:
    """Asking for more can only lower the probability that it matters."""
    effect = Effect("moon", Interval(0, 0, 0), np.array(draws), 1, 1)
    small, large = sorted((one, other))
    assert 0 <= effect.p_matters(large) <= effect.p_matters(small) <= 1


# -- rows and points ---------------------------------------------------------------------------


def test_single_hauls_stand_behind_their_own_group() -> None:
    """Faint points are the counts as logged, none lost and none lent to another group."""
    hauls = _hauls(3, {"wire": 1, "coated": 5})
    found = weigh_traps(
        [*hauls, replace(hauls[0], keepers=None)], "design", "keepers", 1.5, NEW_YORK
    )
    assert sorted(found.singles) == ["coated", "wire"]
    assert sum(found.singles["wire"]) == sum(h.keepers or 0 for h in hauls if h.design == "wire")
    assert len(found.singles["wire"]) == 9
    assert len(found.days) == 3


def test_what_would_settle_it_is_said_at_every_stage() -> None:
    """From nothing to compare to nothing more needed, without a blank."""
    hauls = _hauls(12, {"wire": 1, "coated": 6})
    settled = weigh_traps(hauls, "design", "keepers", 1.5, NEW_YORK).trial
    assert settled.verdict == "settled"
    assert settle_texts(settled)[0] == "Nothing more is needed for this question."
    few = weigh_traps(hauls[:6], "design", "keepers", 1.5, NEW_YORK).trial
    assert "more haul" in settle_texts(few)[0]
    lone = weigh_traps(hauls[:1], "design", "keepers", 1.5, NEW_YORK).trial
    assert "caught something" in settle_texts(lone)[0]


def test_only_groupings_with_two_groups_are_offered() -> None:
    """All hauls used mullet: comparing by bait is not offered; an own column with two values is."""
    hauls = _hauls(1, {"wire": 1, "coated": 5})
    marked = [replace(haul, extra={"crew": str(at % 2)}) for at, haul in enumerate(hauls)]
    names = [name for name, _ in groupings(marked)]
    assert "bait" not in names
    assert {"design", "spot", "trap", "crew"} <= set(names)
    assert groupings([]) == []


def test_a_trip_at_full_moon_stands_at_full_moon() -> None:
    """The full moon is taken from PyEphem, an independent library."""
    full = ephem.next_full_moon("2026/5/25").datetime().replace(tzinfo=UTC)
    outcome = TripOutcome("t", "p", full, 3, 9, judged=12, light=4, water_c=None)
    unjudged = replace(outcome, trip="u", judged=None, light=None)
    (point,) = trip_points([outcome, unjudged], NEW_YORK)
    assert point.moon_d == pytest.approx(29.530589 / 2, abs=0.1)
    assert (point.catch, point.judged) == ("light", 12)
    assert point.light.low < 4 / 12 < point.light.high
    assert point.year_d == 150
    assert trip_points([unjudged], NEW_YORK) == ()


def test_moons_are_named_from_their_nearest_quarter() -> None:
    """Words round the lunation, over its end too."""
    assert moon_words(0.2) == "new moon"
    assert moon_words(29.3) == "new moon"
    assert moon_words(28.0) == "2 d before new moon"
    assert moon_words(17.0) == "2 d after full moon"


def test_point_rows_tell_counts_and_intervals() -> None:
    """The table holds what the picture shows."""
    point = TripPoint("Sun 31 May 2026", 14.7, 150.0, Interval(1 / 3, 0.2, 0.5), "light", 12)
    assert point_rows([point]) == [
        ("Sun 31 May 2026", "full moon", "4 of 12", "33% (20%–50%)", "light")
    ]


def test_marks_grow_with_crabs_judged_but_stay_readable() -> None:
    """One crab is still seen, a thousand do not cover the chart."""
    sizes = [mark_size(judged) for judged in (1, 10, 40, 1000)]
    assert sizes == sorted(sizes)
    assert sizes[0] >= 6
    assert sizes[-1] <= 22


@pytest.mark.parametrize("name", ["light", "dark"])
def test_the_view_draws_in_both_themes(name: str, tmp_path: Path) -> None:
    """The picture command can show the evidence without a screen."""
    from planner.ui.picture import Shot, draw

    out = tmp_path / "evidence.png"
    draw(out, Shot(view="evidence", theme=name, size=(1100, 700), today=TODAY))  # type: ignore[arg-type]
    assert out.stat().st_size > 20_000


def test_the_demo_log_is_learned_from_and_weighed(view: EvidenceView, qtbot: Any) -> None:
    """The real model's evidence fills the tabs: an effect with a sentence each, and a record."""
    _settle(qtbot, view)
    assert view.evidence is not None
    assert view.effects.isVisible()
    assert view.effects.rows.rowCount() == len(view.evidence.effects) >= 2
    said = _words(view.effects)
    judged = sum(1 for outcome in view.bench.log.outcomes("Sedge Hollow") if outcome.judged)
    assert said.count(f"from {judged} trips") == len(view.evidence.effects)
    _turn_to(view, "How forecasts did")
    _settle(qtbot, view)
    assert view.record.rows.rowCount() == len(view.evidence.record.trips) > 10
    assert "past trips forecast from earlier trips only" in view.record.sentence.text()
    assert "No trip begun from a plan" in view.record.promises.text()


def test_plans_are_held_against_what_came(view: EvidenceView, qtbot: Any) -> None:
    """A judged trip that was begun from a plan is set beside the plan's own forecast."""
    log = view.bench.log
    judged = next(each for each in log.outcomes("Sedge Hollow") if each.judged and each.keepers)
    promise = Promise(Interval(14, 9, 20), Interval(0.1, 0.05, 0.2))
    begun = Trip(judged.trip, judged.place, promise=promise)
    view.bench._set_log(Log(log.hauls, (begun,)))
    _turn_to(view, "How forecasts did")
    _settle(qtbot, view)
    assert "1 trip begun from a plan was forecast 14 full keepers" in view.record.promises.text()


def test_a_log_without_judged_crabs_says_what_is_missing(view: EvidenceView, qtbot: Any) -> None:
    """Trips that nobody judged say nothing of fullness, and the view says that."""
    unjudged = [replace(haul, judged=None, light=None) for haul in _hauls(3, {"wire": 2})]
    view.bench._set_log(Log(tuple(unjudged)))
    _settle(qtbot, view)
    assert view.evidence is None
    assert "how full its crabs were" in _words(view.tabs.currentWidget())
