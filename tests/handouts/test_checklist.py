"""The checklist of a trip: right lengths of line, honest about rules, cautions that come up."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

import numpy as np
import pytest
from hypothesis import example, given
from hypothesis import strategies as st
from made_trips import NOVEMBER, made_plan

from planner.assets import demo_log, demo_place
from planner.clock import from_utc64, to_utc64
from planner.handouts import TripFacts, checklist, trip_facts
from planner.handouts.layout import TrapKit, deal, kits_aboard, kits_known
from planner.handouts.rules import rules_here
from planner.logbook import Haul, Log, book_zone, read_log
from planner.phrasing import Style
from planner.sites import Site, load_site
from planner.sites.rule_book import STALE
from planner.sites.site import RuleNote, Rules
from planner.tides import Tide

TODAY = date(2026, 11, 25)


@pytest.fixture(scope="module")
def site() -> Site:
    return load_site(demo_place())


@pytest.fixture(scope="module")
def facts(site: Site) -> TripFacts:
    log = read_log(demo_log(), book_zone)
    return trip_facts(site, made_plan(NOVEMBER), log, 16.0)


def texts(facts: TripFacts, style: Style = Style(), today: date = TODAY) -> str:  # noqa: B008
    sections = checklist(facts, today, style)
    return "\n".join(
        line
        for section in sections
        for line in (
            section.name,
            *section.cautions,
            *(item.text for item in section.items),
            *section.notes,
        )
    )


@pytest.mark.parametrize("hauled_over", ["", "low", "high"])
def test_the_water_at_a_spot_is_the_tide_over_the_whole_soak(site: Site, hauled_over: str) -> None:
    """Protects the line that is too short and the trap that goes dry: both extremes of the soak,
    against a one-minute evaluation of the tide from the set to the last trap out, also where the
    water turns while the traps are hauled."""
    plan = made_plan(NOVEMBER)
    if hauled_over:
        begin = to_utc64(NOVEMBER)
        turns = Tide(site).turns(begin, begin + np.timedelta64(1, "D"))
        turn = from_utc64(turns.times[turns.is_high == (hauled_over == "high")][0])
        plan = made_plan(turn - timedelta(hours=5.5), 5.0)
        assert plan.haul_at < turn < plan.haul_at + timedelta(minutes=site.habits.haul_minutes)
    facts = trip_facts(site, plan)
    step = np.timedelta64(1, "m")
    times = np.arange(to_utc64(plan.set_at), to_utc64(facts.haul_end) + step, step)
    levels = Tide(site).heights(times)
    for spot, water in zip(site.spots, facts.spots, strict=True):
        top = spot.depth_m - spot.trap_height_m
        # A minute of tide is under a millimetre next to a turn.
        assert water.over_trap_least_m == pytest.approx(top + levels.min(), abs=0.002)
        assert abs(to_utc64(water.least_at) - times[levels.argmin()]) <= step
        assert water.deepest_m == pytest.approx(spot.depth_m + levels.max(), abs=0.002)
        assert water.over_trap_at_set_m == pytest.approx(top + levels[0], abs=0.005)
        haul = Tide(site).heights([plan.haul_at])[0]
        assert water.over_trap_at_haul_m == pytest.approx(top + haul, abs=0.005)


def test_line_is_a_third_longer_than_the_deepest_water(facts: TripFacts) -> None:
    """Protects the length of line (a third longer than depth: Snohomish MRC guidance); a line
    rounded down would be too short."""
    for spot in facts.spots:
        assert spot.line_m == pytest.approx(spot.deepest_m * 4 / 3)
        for style, step in ((Style(), 0.5), (Style(length="ft"), 1.0)):
            line = next(
                item.text
                for section in checklist(facts, TODAY, style)
                for item in section.items
                if item.key == f"line {spot.spot}"
            )
            length = float(line.split(": ")[1].split()[0])
            needed = spot.line_m if style.length == "m" else spot.line_m / 0.3048
            assert needed <= length + 1e-9
            assert length < needed + step


def test_every_category_of_rules_is_said_or_named_as_missing() -> None:
    """Protects against a rule that nobody thought of: with nothing entered all sixteen headings
    of the trade's checklist are asked for."""
    here = rules_here(Rules(), TODAY)
    assert len(here.missing) == 16
    assert here.stale
    assert not here.rules


def test_the_demo_place_lacks_what_it_lacks(site: Site) -> None:
    """Protects the matching of the user's own headings to the trade's."""
    here = rules_here(site.rules, TODAY)
    assert here.missing == ("turtle excluder", "catch record", "gear out of channels")
    assert [rule.text for rule in here.rules[: len(site.rules.notes)]] == [
        note.text for note in site.rules.notes
    ]


def test_a_heading_is_answered_by_its_name_not_by_chance() -> None:
    """Protects against a false "answered": a line in the text of another rule is no rule of lines,
    and a deadline is no line."""
    rules = Rules(notes=(RuleNote("deadline", "Leave the line and the ring in the channel."),))
    missing = rules_here(rules, TODAY).missing
    assert "weighted line, none floating" in missing
    assert "escape or cull rings" in missing


def test_a_check_of_the_rules_on_a_day_to_come_is_a_caution() -> None:
    """A slip in the year must not pass for a check on the sheet that goes aboard."""
    here = rules_here(Rules(checked=TODAY + timedelta(days=1)), TODAY)
    assert here.stale
    assert "still to come" in here.checked
    assert not rules_here(Rules(checked=TODAY), TODAY).stale


@given(age=st.integers(0, 1000))
@example(age=120)
@example(age=121)
def test_rules_are_stale_when_older_than_a_season(age: int) -> None:
    """Protects the reminder: it comes with the first day past four months and stays."""
    rules = Rules(checked=TODAY - timedelta(days=age), checked_where="agency page")
    here = rules_here(rules, TODAY)
    assert here.stale == (timedelta(days=age) > STALE)
    assert ("again" in here.checked) == here.stale
    assert "agency page" in here.checked


def test_cautions_are_always_there(facts: TripFacts) -> None:
    """Protects what can hurt someone: weather, life jackets, float plan, food, advisories, cuts."""
    said = texts(facts).casefold()
    for word in (
        "small-craft", "life jacket", "float plan", "call for help", "cook live crabs only",
        "thoroughly", "advisory", "open cuts", "warm water", "check them with the agency",
    ):  # fmt: skip
        assert word in said, word


def test_a_forecast_is_read_for_both_days_where_there_are_two(site: Site, facts: TripFacts) -> None:
    """A trip of one day has no second one to read a forecast for."""
    one_day = trip_facts(site, made_plan(NOVEMBER, 5.0), None, 16.0)
    assert "small-craft warnings read, wind against tide minded" in texts(one_day)
    assert "small-craft warnings read on both days" in texts(facts)


def test_cold_and_warm_water_raise_their_cautions(facts: TripFacts) -> None:
    """Protects the cautions that depend on the water: cold shock below, cuts above."""

    def cautions(water_c: float | None) -> str:
        sections = checklist(replace(facts, water_c=water_c), TODAY, Style())
        return " ".join(text for section in sections for text in section.cautions)

    assert "Cold water, about 9 °C" in cautions(9.0)
    assert "Cold water" not in cautions(18.0)
    assert "bacteria" in cautions(27.0)
    assert "bacteria" not in cautions(18.0)
    unknown = replace(facts, water_c=None)
    assert "Water temperature unknown" in texts(unknown)


def test_a_place_with_nothing_entered_still_gives_a_list(site: Site) -> None:
    """Protects a first trip: no spots, no rules, no log, no temperature."""
    bare = replace(site, spots=(), rules=Rules(), monthly_water_c=None)
    facts = trip_facts(bare, made_plan(NOVEMBER), None, float("nan"))
    said = texts(facts)
    assert "12 traps" in said
    assert "A third longer than".casefold() in said.casefold()
    assert "No date entered" in said


def test_keys_are_told_apart(facts: TripFacts) -> None:
    """Protects the remembered ticks: one key for two items would tick both."""
    keys = [item.key for section in checklist(facts, TODAY, Style()) for item in section.items]
    assert len(set(keys)) == len(keys)


def test_traps_are_those_last_out_then_numbers() -> None:
    """Protects the list of traps: the newest trip's first, then older ones, each label once."""
    hour = NOVEMBER
    old = Haul("old", "here", trap="Z", design="wide", hauled_at=hour - timedelta(days=9))
    older_a = Haul("old", "here", trap="A", design="before", hauled_at=hour - timedelta(days=9))
    new = Haul("new", "here", trap="A", design="now", hauled_at=hour)
    elsewhere = Haul("new", "there", trap="Q", hauled_at=hour)
    log = Log((older_a, old, elsewhere, new))
    known = kits_known(log, "here")
    assert [(kit.label, kit.design) for kit in known] == [("A", "now"), ("Z", "wide")]
    assert [kit.label for kit in kits_aboard(known, 4)] == ["A", "Z", "1", "2"]
    assert [kit.label for kit in kits_aboard(known, 1)] == ["A"]
    assert kits_known(None, "here") == ()


@given(
    known=st.lists(st.integers(1, 9).map(str) | st.sampled_from("ABC"), unique=True, max_size=9),
    gone=st.frozensets(st.integers(1, 9).map(str), max_size=5),
    count=st.integers(0, 14),
)
def test_fresh_numbers_fill_up_beside_any_labels(
    known: list[str], gone: frozenset[str], count: int
) -> None:
    """Protects the count of traps: as many as asked for, no label twice, the lowest numbers that
    neither a known trap nor one that is gone has."""
    known = [label for label in known if label not in gone]
    labels = [kit.label for kit in kits_aboard([TrapKit(each) for each in known], count, gone)]
    assert len(set(labels)) == len(labels) == count
    fresh = labels[len(known) :]
    unused = [str(n) for n in range(1, 40) if str(n) not in gone and str(n) not in known]
    assert labels[: len(known)] == known[:count]
    assert fresh == unused[: len(fresh)]


@given(
    designs=st.lists(st.sampled_from(["bare", "coated", "chambered", ""]), max_size=30),
    spots=st.integers(0, 8),
)
def test_the_deal_is_even(designs: list[str], spots: int) -> None:
    """Protects the comparison of traps: every trap has one spot, spots differ by at most one
    trap, and no design has two traps on one spot while another spot has none of it."""
    kits = [TrapKit(str(at), design) for at, design in enumerate(designs)]
    names = [f"spot {at}" for at in range(spots)]
    placed = deal(kits, names)
    assert sorted(each.trap for each in placed) == sorted(kit.label for kit in kits)
    assert [each.spot for each in placed] == sorted(each.spot for each in placed)
    if not names:
        assert {each.spot for each in placed} <= {""}
        return
    counts = [sum(each.spot == name for each in placed) for name in names]
    assert max(counts) - min(counts) <= 1
    for design in set(designs):
        per_spot = [
            sum((each.spot, each.design) == (name, design) for each in placed) for name in names
        ]
        assert max(per_spot) - min(per_spot) <= 1


def test_the_layout_separates_designs_where_the_log_has_them(facts: TripFacts) -> None:
    """Protects the comparison of traps: each trap once, designs apart over the spots, and the
    sheet says what the layout teaches."""
    placed = facts.traps.placed
    assert sorted(each.trap for each in placed) == sorted(kit.label for kit in facts.traps.kits)
    assert "trip" in facts.traps.sentence
    for design in {kit.design for kit in facts.traps.kits}:
        assert len({each.spot for each in placed if each.design == design}) >= 2


def test_each_trap_gets_the_bait_it_had(facts: TripFacts) -> None:
    """Protects a comparison of baits: which bait went into which trap is on the list."""
    baits = ("mackerel", "chicken necks")
    kits = tuple(replace(kit, bait=baits[at % 2]) for at, kit in enumerate(facts.traps.kits))
    said = texts(replace(facts, traps=replace(facts.traps, kits=kits)))
    for at, bait in enumerate(baits):
        labels = ", ".join(kit.label for kit in kits[at::2])
        assert f"{bait} in {labels}" in said
