"""How far a plan meets the user's wishes, and what they cost, in words."""

from __future__ import annotations

from collections.abc import Iterator

from planner.phrasing import Style, clock_text, soak_text
from planner.sites.site import Site
from planner.trips.choosing import A_DAY_OF_SOAK, Wishes
from planner.trips.facts import Facts
from planner.words import counted, say


def wish_outcomes(
    site: Site, facts: Facts, wishes: Wishes, style: Style
) -> Iterator[tuple[str, str]]:
    """Yield each wish with how far the plan meets it."""
    if wishes.haul_water != "any":
        water = {
            "rising": say("rising water at the haul"),
            "falling": say("falling water at the haul"),
            "turning": say("turning water at the haul"),
        }
        yield water[wishes.haul_water], _met(wishes.haul_water == haul_water(facts))
    if wishes.haul_time != "any":
        early = wishes.haul_time == "early"
        wish = say("a haul early in the day") if early else say("a haul late in the day")
        yield wish, clock_text(facts.haul_at, site.zone, style)
    if wishes.soak == "short":
        yield (
            say("a short soak"),
            say(
                "{soak}, ranked as if each day of soak took {share:.0%} of the keepers",
                soak=soak_text(facts.soak_h),
                share=A_DAY_OF_SOAK,
            ),
        )
    if wishes.drive == "long":
        yield (
            say("one long drive, not two"),
            say("met, set and haul are on one day")
            if on_one_day(site, facts)
            else say("not met, ranked by half the keepers for two drives"),
        )
    if wishes.daylight_slack_min > 0:
        yield (
            say("{minutes:.0f} min of daylight after the haul", minutes=wishes.daylight_slack_min),
            _met(facts.slack_after_haul_h * 60 >= wishes.daylight_slack_min),
        )


def wish_texts(site: Site, facts: Facts, wishes: Wishes, style: Style) -> Iterator[str]:
    """Yield a sentence for each wish that was asked for, and what the wishes cost together."""
    for wish, outcome in wish_outcomes(site, facts, _asked(wishes), style):
        yield say("Wish for {wish}: {outcome}.", wish=wish, outcome=outcome)
    fewer = round(facts.most_keepers) - round(facts.full_keepers.mean)
    if (wishes.soak, wishes.drive) != ("any", "any") and fewer >= 1:
        yield say(
            "Against the most that any plan of these days promises it has {keepers}.",
            keepers=counted(fewer, "fewer full keeper"),
        )


def haul_water(facts: Facts) -> str:
    """Return "turning", "rising" or "falling": what the water does during the haul."""
    if facts.haul_turns:
        return "turning"
    return "rising" if facts.haul_end_level_m > facts.haul_level_m else "falling"


def _asked(wishes: Wishes) -> Wishes:
    """Return the wishes without the daylight that everybody has, and reads of elsewhere."""
    return Wishes(wishes.haul_water, wishes.haul_time, 0.0, wishes.soak, wishes.drive)


def on_one_day(site: Site, facts: Facts) -> bool:
    """Tell whether set and haul are on one local day."""
    days = [at.astimezone(site.zone).date() for at in (facts.set_at, facts.haul_at)]
    return days[0] == days[1]


def _met(met: bool) -> str:
    return say("met") if met else say("not met")
