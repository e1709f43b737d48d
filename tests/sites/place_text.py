"""Place files with every table, for tests to bend."""

WHOLE = """\
format = 1
name = "Otter Bight"            # invented
invented = true
latitude = 38.2
longitude = -76.1
timezone = "America/New_York"
species = "blue-crab"

[water]
units = "m"
datum = "MLLW"
mean_level = 0.26
phase_reference = "UTC"
node_factors = "yearly"
constants_state = "2022"
source = "invented for the tests"
[water.constituents]
M2 = { amplitude = 0.21, phase = 61.0 }
K1 = { amplitude = 0.05, phase = 182.0 }

[ramp]
lowest_level = -0.1

[slack]
after_high_minutes = 40         # watched at the bridge
after_low_minutes = -15.5

[[spots]]
name = "grass edge"
depth = 1.8
trap_height = 0.35

[[spots]]
name = "deep bend"
depth = 3.0
trap_height = 0.4

[temperature]
monthly = [4, 4, 7, 13, 19, 24, 27, 26, 23, 17, 11, 6]

[[closures]]
reason = "winter"
from = "12-01"
to = "03-15"

[[closures]]
reason = "race day"
from = 2026-07-04
to = 2026-07-05

[[closures]]
reason = "no hauling on Sundays"
weekdays = ["Sun"]

[rules]
checked = 2026-03-02
where = "invented"
max_traps = 20
max_soak_hours = 72

[[rules.notes]]
category = "minimum size"
text = "127 mm from point to point"

[free]
weekdays = ["Fri", "Saturday"]
from = "05:30"
to = 20:30:00
also = [2026-05-25]
never = [2026-06-06]

[trip]
traps = 12
soak_hours = [14, 50]
bait_minutes = 20
set_minutes = 45
haul_minutes = 80
cover_margin = 0.25
"""

OFFSETS = """\
format = 1
name = "Heron Slough"           # invented
latitude = 38.3
longitude = -76.2
timezone = "America/New_York"

[water]
units = "ft"
datum = "MLLW"
[water.offsets]
reference = "otter-bight.toml"
high_minutes = 47
low_minutes = 62
high_factor = 0.86
high_add = -0.1
low_factor = 0.9
"""

TABLED = """\
format = 1
name = "Plover Gut"             # invented
latitude = 38.3
longitude = -76.2
timezone = "America/New_York"

[water]
units = "m"
datum = "MLLW"
[water.offsets]
reference = "otter-bight.toml"  # from the almanac

[water.offsets.tabled]
clock = "UTC-05:00"             # never summer time
high_times = [                  # noon and midnight
    { at = 00:00:00, minutes = 35 },
    { at = "06:00", minutes = 23 },
]
low_times = [{ at = "00:00", minutes = 10 }, { at = "06:00", minutes = -5 }]
high_heights = [{ there = 0.55, add = 0.11 }, { there = 0.45, add = 0.08 }]
low_heights = [{ there = 0.0, add = 0.01 }, { there = 0.11, add = 0.02 }]
"""
