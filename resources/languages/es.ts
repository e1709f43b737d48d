<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
 <context>
  <name>Fullshell</name>
  <message>
   <location filename="planner/ui/languages.py" />
   <source>English</source>
   <comment>the name of this language</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/languages.py" />
   <source>%</source>
   <comment>after a number</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Mon</source>
   <comment>short day</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Tue</source>
   <comment>short day</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Wed</source>
   <comment>short day</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Thu</source>
   <comment>short day</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Fri</source>
   <comment>short day</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Sat</source>
   <comment>short day</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Sun</source>
   <comment>short day</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Monday</source>
   <comment>day</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Tuesday</source>
   <comment>day</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Wednesday</source>
   <comment>day</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Thursday</source>
   <comment>day</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Friday</source>
   <comment>day</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Saturday</source>
   <comment>day</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Sunday</source>
   <comment>day</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Jan</source>
   <comment>short month</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Feb</source>
   <comment>short month</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Mar</source>
   <comment>short month</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Apr</source>
   <comment>short month</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>May</source>
   <comment>short month</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Jun</source>
   <comment>short month</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Jul</source>
   <comment>short month</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Aug</source>
   <comment>short month</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Sep</source>
   <comment>short month</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Oct</source>
   <comment>short month</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Nov</source>
   <comment>short month</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>Dec</source>
   <comment>short month</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>January</source>
   <comment>month</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>February</source>
   <comment>month</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>March</source>
   <comment>month</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>April</source>
   <comment>month</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>May</source>
   <comment>month</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>June</source>
   <comment>month</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>July</source>
   <comment>month</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>August</source>
   <comment>month</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>September</source>
   <comment>month</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>October</source>
   <comment>month</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>November</source>
   <comment>month</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/words.py" />
   <source>December</source>
   <comment>month</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/arguments.py" />
   <source>text is for people, JSON and CSV for programs (default: text)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/arguments.py" />
   <source>metres or feet (default: in text as the place file has it, else metres)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/arguments.py" />
   <source>a place file, or a name of your book</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/arguments.py" />
   <source>default: today, 00:00</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/arguments.py" />
   <source>default: {days} days later; ISO 8601, without an offset the place's local time</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/arguments.py" />
   <source>default: today</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/arguments.py" />
   <source>included; default: {default} later</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/arguments.py" />
   <source>a logbook file or a haul table (CSV)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/check.py" />
   <source>mean level</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/check.py" />
   <source>mean range</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/check.py" />
   <source>range at springs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/check.py" />
   <source>range at neaps</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/check.py" />
   <source>mean higher high water</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/check.py" />
   <source>mean lower low water</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/check.py" />
   <source>highest in 19 years</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/check.py" />
   <source>lowest in 19 years</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/check.py" />
   <source>What a place file says, whether it can be right, and what was observed there.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/check.py" />
   <source>{n_constants} constituents{state}, {constituent} the largest; node factors {node_factors}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/check.py" />
   <source>{difference_m:{sign}.0f} cm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/check.py" />
   <source>fitted to the levels, lags on UTC:</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/check.py" />
   <source>amplitude, {unit}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/check.py" />
   <source>lag, deg</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/check.py" />
   <source>position: {latitude_deg:.4f} {north_south}, {longitude_deg:.4f} {east_west}; clock of {key}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/check.py" />
   <source>water: {made_of}; heights above {datum}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/check.py" />
   <source>differences from {name}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/check.py" />
   <source> of {constants_state}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/check.py" />
   <source>tide: {tide_type}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/check.py" />
   <source>observed: {seen} high and low waters, {matched} matched with predicted ones</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/check.py" />
   <source>observed: {size} levels beside the predicted ones</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/check.py" />
   <source>unknown from one</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/check.py" />
   <source>{apart:{sign}.2f} ft</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/check.py" />
   <source>what was seen there: CSV with the header time,height,kind for high and low waters, or time,height for levels; heights in the units of the place file, or of --units</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/check.py" />
   <source>work constants out from the levels of --observed (15 to 400 days of them)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/check.py" />
   <source>--fit needs --observed FILE with levels: a CSV headed time,height</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/check.py" />
   <source>source: {source}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/check.py" />
   <source>ramp: launches from {height} up</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/check.py" />
   <source>water temperature: {coldest:g} to {warmest:g} °C over the year</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/check.py" />
   <source>closures: {listed}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/check.py" />
   <source>rules: {n_notes} notes, checked {checked}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/check.py" />
   <source>tide: the water never turns here</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/check.py" />
   <source>  heights: {bias} on average, scatter {scatter}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/check.py" />
   <source>{scatter:.0f} min</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/check.py" />
   <source>  times: {time_bias_min:+.0f} min on average, scatter {spread}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/check.py" />
   <source>the file is in order</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/check.py" />
   <source>cover at lowest</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/dates.py" />
   <source>fullness (80%)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/dates.py" />
   <source>light crabs (80%)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/dates.py" />
   <source>why, in points</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/dates.py" />
   <source>moon's age</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/dates.py" />
   <source>How full the crabs should be, day by day, and why.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/dates.py" />
   <source>learned from {trips}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/dates.py" />
   <source>as the average</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/dates.py" />
   <source>from what is known in general (no logged trip speaks yet)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/dates.py" />
   <source>Points are crabs in 100 more or fewer light than the year's average of {yearly_light_share:.0f}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/dates.py" />
   <source>logged trip</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/dates.py" />
   <source>logged trips</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/dates.py" />
   <source>{mean:.2f} ({low:.2f}-{high:.2f})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/dates.py" />
   <source>{lunar_age_d:.0f} d</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/dates.py" />
   <source>how full the crabs should be, {basis}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/learn.py" />
   <source>What the log says: effects with their intervals, and how forecasts did.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/learn.py" />
   <source>light crabs of 100, between best and worst day, that are worth caring about (default: {default_care})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/learn.py" />
   <source>"{text_}" is not a number of points from 1 to 100</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/learn.py" />
   <source>No trip here was judged for fullness, so no effect of moon or season is estimated.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/learn.py" />
   <source>{n_outcomes} logged trips, {judged} crabs judged, {light} light</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/learn.py" />
   <source>{light} of {judged}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/picture.py" />
   <source>Draw a view of the window to a PNG file; no screen is needed.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/picture.py" />
   <source>{out}: the view {view}, {width}x{height}
</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/picture.py" />
   <source>the file to write</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/picture.py" />
   <source>(default: dates)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/picture.py" />
   <source>a place file or name (default: the demo place)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/picture.py" />
   <source>a logbook file or haul table</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/picture.py" />
   <source>(default: 1280x800)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/picture.py" />
   <source>the day the window is opened on</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/picture.py" />
   <source>(default: m)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/picture.py" />
   <source>"{text_}" is not a .png file name</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/picture.py" />
   <source>"{text_}" is not a size; write it like 1280x800, from 640x480 to 7680x4320</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/picture.py" />
   <source>{out}: there is no folder {parent}; make it first</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/picture.py" />
   <source>the window needs {missing}; install the program with its window: pip install "fullshell[window]"</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/picture.py" />
   <source>the window's libraries do not load ({error}); see packaging/README.md</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/plans.py" />
   <source>Ranked plans: when to set and when to haul.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/plans.py" />
   <source>how many plans at most (default: {default_most})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/plans.py" />
   <source>a day within the span: say what rules a set or haul out, or what it lacks</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/plans.py" />
   <source>"{text_}" is not a number from 1 to 1000</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/plans.py" />
   <source>--why has no place in a table; ask for --format text or json</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/plans.py" />
   <source>--why {why} is outside {first} to {last}; give --from and --to around it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/plans.py" />
   <source>set-and-haul plans, most full keepers first</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/plans.py" />
   <source>{rank:&gt;3}  set {set_at}, haul {haul_at}, soak {soak}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/plans.py" />
   <source>No plan keeps every limit on these days.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/plans.py" />
   <source>ruled out</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/plans.py" />
   <source>pairs of set and haul</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/sky.py" />
   <source>Sun and moon, day by day, and the moon's phases.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/sky.py" />
   <source>{default_days} days</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/sky.py" />
   <source>first light</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/sky.py" />
   <source>last light</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/sky.py" />
   <source>{lunar_age_d:.1f} d</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/sky.py" />
   <source>sun and moon, on the clock of {key}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/sky.py" />
   <source>up all day</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/sky.py" />
   <source>{name} moon: {when} {zone}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/sky.py" />
   <source>down all day</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/start.py" />
   <source>A picture of the window: {picture}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/start.py" />
   <source>Every job runs without a screen: fullshell --help</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/start.py" />
   <source>There is no screen here, so this is the invented demo place in text.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/start.py" />
   <source>There is no screen here, so this is the place in text.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/start.py" />
   <source>No picture of the window: {notice}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/take.py" />
   <source>the trip sheet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/take.py" />
   <source>the calendar file</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/take.py" />
   <source>the waypoints</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/take.py" />
   <source>the water at the spots</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/take.py" />
   <source>Write what is taken along for a plan: the trip sheet (.pdf), a calendar file (.ics), waypoints (.gpx) or the water at the spots (.csv).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/take.py" />
   <source>{out}: {kinds} of plan {plan}, set {begin}, haul {end}
</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/take.py" />
   <source>the file to write; its ending says which</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/take.py" />
   <source>which of the ranked plans of these days, as `fullshell plans` ranks them (default: 1)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/take.py" />
   <source>"{text_}" is not a {others} or {last} file name</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/take.py" />
   <source>--plan {plan}: there are {n_found} plans at {name} from {first} to {last}; see fullshell plans, or give other days</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/tally.py" />
   <source>Write what a trip is tallied on: a sheet to print, or a page for a phone.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/tally.py" />
   <source>{out}: {n_rows} traps of trip {name}
</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/tally.py" />
   <source>the file to write; its ending says which of the two</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/tally.py" />
   <source>a trip of the log, with its own rows</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/tally.py" />
   <source>the day of hauling, for the traps of the last trip or of the next (default: today)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/tally.py" />
   <source>"{text_}" is not a .pdf or .html file name</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/tally.py" />
   <source>the log has no trip "{trip}" at {name}; leave --trip out for a new trip</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/trials.py" />
   <source>Compare traps honestly, and lay out the next trip.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/trials.py" />
   <source>{rate:.2f} ({low:.2f}-{high:.2f})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/trials.py" />
   <source>design, entrances, colour, bait, spot, trap, depth, soak or a column of your own (default: design)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/trials.py" />
   <source>keepers, crabs, shorts, females, bycatch or light (default: keepers)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/trials.py" />
   <source>the day from which dates are counted (default: today)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/trials.py" />
   <source>a difference worth knowing of, such as 1.5 (default)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/trials.py" />
   <source>"{text_}" is not a ratio from 1.01 to 100, such as 1.5</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/trials.py" />
   <source>a haul (80%)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/trials.py" />
   <source>best one</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/trials.py" />
   <source>{name}: p = {p:.2f}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/trials.py" />
   <source>Next trip, so that designs can be told apart soonest:</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/water.py" />
   <source>Water heights at a step, or high and low waters.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/water.py" />
   <source>such as 6m, 1h or 1d (default: 1h)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/water.py" />
   <source>high and low waters instead</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/water.py" />
   <source>water above {datum}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/water.py" />
   <source>high and low water above {datum}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/commands/water.py" />
   <source>  no high or low water in this span</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/entry.py" />
   <source>a library does not load ({error}); find out what is wrong: fullshell doctor</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/entry.py" />
   <source>this is a fault in the program itself, not in your input: {name__}: {error}; set FULLSHELL_TRACEBACK=1 to see where, and report it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/entry.py" />
   <source>the output could not be written: {strerror}; send it somewhere else</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/parser.py" />
   <source>Plans crab trapping trips around water, light, rules and how full the crabs should be. Without a job it opens the window, on a place file when that is all there is; on a machine without a screen it prints the ranked plans of that place, or of the demo place, and draws the window to a file.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/parser.py" />
   <source>PLACE is a place file (.toml) or the name of a place in your book; LOG is a logbook file or a haul table (CSV). Exit status: 0 done, 2 the command line is wrong, 3 the input is wrong.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/parser.py" />
   <source>{message}; see {prog} --help</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/spans.py" />
   <source>"{text_}" is outside the calendar; give a year such as 2026</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/spans.py" />
   <source>"{text_}" is not a step; write a number with s, m, h or d, such as 6m or 1h</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/spans.py" />
   <source>--every gives {count} values; take a longer step or fewer days, for at most {max_values}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/spans.py" />
   <source> (today, as it was left out)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/spans.py" />
   <source>give --from as well</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/spans.py" />
   <source>exchange them</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/spans.py" />
   <source>--from {begin}{today} is after --to {end}; {remedy}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/spans.py" />
   <source>--from {begin} --to {end} is {days} days; ask for at most {most}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/spans.py" />
   <source>"{text_}" is not an instant; write it like 2026-08-14T06:30 (local time of the place) or 2026-08-14T10:30Z</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/cli/spans.py" />
   <source>"{text_}" is not a date; write it like 2026-08-14</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/constituents/names.py" />
   <source>{name!r} is not a constituent this program knows{hint}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/constituents/names.py" />
   <source>; near it: {near}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/constituents/pasting.py" />
   <source>line {number}: {name} has fewer numbers than the others</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/constituents/pasting.py" />
   <source>{name} is there twice (also in line {line})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/constituents/pasting.py" />
   <source>{name} has a negative amplitude, {amplitude:g}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/constituents/pasting.py" />
   <source>{name} has a lag of {lag:g} degrees</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/constituents/pasting.py" />
   <source>The lags are headed as local: give the clock they were worked out in.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/constituents/pasting.py" />
   <source>line {number}: {name} has no amplitude and lag</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/constituents/pasting.py" />
   <source>line {number}: {reason}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/constituents/pasting.py" />
   <source>There are two columns of lags; the first was taken.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/constituents/pasting.py" />
   <source>; that is the mean level</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/constituents/pasting.py" />
   <source>line {number}: no constituent known in “{said}”{mean}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/errors.py" />
   <source> (found {shown})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/errors.py" />
   <source>problem</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/errors.py" />
   <source>problems</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/calendar.py" />
   <source>Check forecast, rules and gear</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/calendar.py" />
   <source>Leave with fresh bait {clock}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/calendar.py" />
   <source>Set {set_at} {set_zone}, haul {haul_at} {haul_zone} ({key}); soak {soak}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/calendar.py" />
   <source>Read the marine forecast, wear life jackets, leave a float plan ashore.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/calendar.py" />
   <source>Set crab traps</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/calendar.py" />
   <source>Haul crab traps</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/calendar.py" />
   <source>This place and its water are invented.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Common practice, but for the figures of this plan; the rules come first.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Lines are a third longer than the water is deep at the highest of the soak; more in a strong current.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>set, back by {set_back}; haul, back by {haul_back} {zone}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Open cuts and warm water: bacteria there can make a cut dangerous within a day. Wash it, and see a doctor at once if it reddens or swells.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>{metres_to:.1f} {length}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Rules here</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>{bait} in {labels}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>; as on the last trip: {by_trap}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Safety</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Cook live crabs only, and thoroughly.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Where an advisory says so, throw away the soft parts and the cooking water.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Food and health</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Traps, lines and labels</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Bait and tools</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Not written down for this place: {missing}. Ask the agency, and write the answers in the place book.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>{count} traps{words}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>{count} floats, each with the marks that the rules ask for, and the trap's label: {listed}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Line weighted or sinking, no slack floating</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Every trap looked over: doors shut, escape openings clear, weak cord whole</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>{spares} spare floats and lines, a spare label, a knife</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Fresh bait for {n_kits} traps and {spares} over{usual}; aboard by {leave}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Gauge for the legal size, and know where it is measured</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Gloves and tongs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Hook for the floats, and a measuring stick or lead line</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Basket or box with wet cover and shade; ice for the way home</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Tally sheet and pencil; catch record where the law asks</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Marine forecast and small-craft warnings read on both days, wind against tide minded</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>A life jacket that fits for everybody, worn</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Float plan left ashore ({both}); if not heard of by {alarm}, call for help</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Charged phone or radio, light, whistle; engine cut-off worn</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Fuel for both ways and a third over, anchor, oar, bailer, plug</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Water temperature unknown. In cold water a fall overboard takes the breath and the strength within minutes: dress for the water, not the air.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Local advisory read: which water, which crabs, how many</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Crabs kept alive, damp, shaded and cool; dead ones thrown out</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Open cuts covered, clean water and soap aboard</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>{spot}, {traps}: {line} of line each, for water up to {deepest} deep</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Line a third longer than the water is deep at high water</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>Cold water, about {temperature}: a fall overboard takes the breath and the strength within minutes. Dress for the water, not the air.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>trap</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/checklist.py" />
   <source>traps</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/deck.py" />
   <source>This trip has no traps yet: add them first, then take it on deck.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/pdf_file.py" />
   <source>{path} cannot be written ({strerror}); choose another folder or make room.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/rules.py" />
   <source>Checked {day} {year}{where}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/rules.py" />
   <source>{on}: {months} months ago, and rules change. Check with the agency again.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/rules.py" />
   <source>No date entered for when these rules were checked: check with the agency.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/rules.py" />
   <source>At most {max_traps} traps.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/rules.py" />
   <source>Haul within {max_soak_h:g} hours of the set.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>Least water {least_at}. Line: a third longer than the deepest water.{more}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>moon {lit}% lit, rises {rises}, sets {sets}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>{first} at the set, {last} at the haul</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>; latest {to}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>No spots entered: whether the traps stay covered was not checked.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source> {deeper} deeper spots are not listed.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>Marine forecast and small-craft warnings read; life jackets worn; float plan ashore.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>Cook live crabs only, and thoroughly; heed local advisories. In warm water an open cut can turn dangerous within a day: wash it, and see a doctor if it reddens.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>and {n_rules} more rules in the place file</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>{name}: set {set_day}, haul {haul_day}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>Made {day} {today.year} with Fullshell. Times on the clock of {key} ({clocks}).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>Leave with bait</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>Set</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>{at} to {to}{window}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>Haul</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>{at} to {to}; soak {soak}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>Expect</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>{count} full keepers; light crabs {light}. Brackets hold 8 times in 10.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>sun up all day</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>light {dawn}, sun {rise} to {sets}, dark {dusk}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>Water about {temperature}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>{length} above {datum}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>INVENTED place, water and rules: not for a real trip.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>charted depth</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>over trap at set</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>least over trap</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>over trap at haul</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>and {left_out} more traps, on the screen</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>Turns in the soak: {turns}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>No turn in the soak.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/sheet.py" />
   <source>and {more} more warnings on the screen</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/sheet_pdf.py" />
   <source>Water at the spots</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/sheet_pdf.py" />
   <source>Water, {level_name}; grey: dark</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/sheet_pdf.py" />
   <source>This trip does not fit on one page: shorten the rules or the names of the place.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/sheet_pdf.py" />
   <source>Traps</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/sheet_pdf.py" />
   <source>Sun and moon</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/sheet_pdf.py" />
   <source>Mind</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/sheet_pdf.py" />
   <source>None entered.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/tally.py" />
   <source>Keepers</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/tally.py" />
   <source>Shorts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/tally.py" />
   <source>Females</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/tally.py" />
   <source>Eggs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/tally.py" />
   <source>Judged</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/tally.py" />
   <source>Light</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/tally.py" />
   <source>{day} {days:%b %Y}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/tally.py" />
   <source> (haul {day})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/tally.py" />
   <source>{place}, trip {name}{hauled}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/tally.py" />
   <source>Made {day} {today.year} with Fullshell. Times on the clock of {key}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/tally.py" />
   <source>INVENTED place: not for a real trip.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/tally.py" />
   <source>People aboard</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/tally.py" />
   <source>Water °{temperature}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/tally.py" />
   <source>Weather</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/tally.py" />
   <source>One tick a crab; write the number where the boxes run out. Looked and found none: write 0. Left empty means not recorded, which is not zero.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/tally.py" />
   <source>Eggs (egg-bearing): count them among the females too. Judged: legal crabs looked at for fullness. Light: count them among the judged too.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/tally.py" />
   <source>Free shorts and protected crabs at once. {rules_caution}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/tally_pdf.py" />
   <source>Trap</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/tally_pdf.py" />
   <source>Hauled</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/tally_pdf.py" />
   <source>Other kinds, notes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/tally_pdf.py" />
   <source>Page {number} of {n_pages}. </source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/water_table.py" />
   <source>{name}: over the trap, {unit}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/waypoints.py" />
   <source>{name}, set {day}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/waypoints.py" />
   <source>{invented}Trap spots. {tide_caution}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/waypoints.py" />
   <source>No spot of {name} has a position yet: give latitude and longitude for its spots in the place book, then write the waypoints.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/waypoints.py" />
   <source>INVENTED place: not for a real trip. </source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/waypoints.py" />
   <source>charted depth {height} below {datum}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/waypoints.py" />
   <source>{invented}Traps: {labels}; {depth}; {line} of line</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/handouts/waypoints.py" />
   <source>crab traps</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/grid.py" />
   <source>is a workbook of the old kind, or one behind a password</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/grid.py" />
   <source>save it as .xlsx without a password, or as CSV</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/grid.py" />
   <source>column {number}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/grid.py" />
   <source>has {filled} cells where the heading has {width} columns</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/grid.py" />
   <source>put texts that hold the separator in quotation marks, one cell a column</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/grid.py" />
   <source>is larger than a table can be ({max_bytes} MB)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/grid.py" />
   <source>name a table of hauls</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/meanings.py" />
   <source>kept as it is</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/meanings.py" />
   <source>trap's label</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/meanings.py" />
   <source>kind of trap</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/meanings.py" />
   <source>set: date and time</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/meanings.py" />
   <source>set: date</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/meanings.py" />
   <source>set: time of day</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/meanings.py" />
   <source>hauled: date and time</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/meanings.py" />
   <source>hauled: date</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/meanings.py" />
   <source>hauled: time of day</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/meanings.py" />
   <source>soak in hours</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/meanings.py" />
   <source>with eggs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/meanings.py" />
   <source>other kinds</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/meanings.py" />
   <source>water temperature</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/plan.py" />
   <source>{} lines have a time in the hour that the clock shows twice; read as the first of the two, or as the second where only that lies after the set</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/plan.py" />
   <source>write it as year-month-day and clock, such as 2026-08-14 06:40</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/plan.py" />
   <source>{day.day} {day:%b %Y}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/plan.py" />
   <source>{name} (table)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/plan.py" />
   <source>is a time of day without a date</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/plan.py" />
   <source>has no time of day</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/plan.py" />
   <source>add the clock time, such as 06:40</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/plan.py" />
   <source>is not a soak in hours</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/plan.py" />
   <source>write hours, such as 24</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/plan.py" />
   <source>{} cells with a dash or ? taken as not recorded</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/plan.py" />
   <source>fill in its date</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/plan.py" />
   <source>is not a time</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/text_grid.py" />
   <source>save it as CSV in UTF-8, or as .xlsx</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/text_grid.py" />
   <source>commas</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/text_grid.py" />
   <source>semicolons</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/text_grid.py" />
   <source>tabs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/text_grid.py" />
   <source>upright strokes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/text_grid.py" />
   <source>, {at} lines above the heading left out</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/text_grid.py" />
   <source>holds zero bytes; this is no text</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/text_grid.py" />
   <source>is empty</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/text_grid.py" />
   <source>begin it with a heading: trip, place, trap, keepers...</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/text_grid.py" />
   <source>{encodings} text separated by {shown}{above}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/text_grid.py" />
   <source>is not {encodings} text</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/text_grid.py" />
   <source>check the quotation marks from this line on; double those inside a text</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/text_grid.py" />
   <source>is no text</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/text_grid.py" />
   <source>line {number}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/text_grid.py" />
   <source>is not CSV: {error}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/workbook_grid.py" />
   <source>save it anew as .xlsx, or as CSV</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/workbook_grid.py" />
   <source>, of {others} sheets</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/workbook_grid.py" />
   <source>is not a workbook that can be read ({name__})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/workbook_grid.py" />
   <source>has no sheet with anything in it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/workbook_grid.py" />
   <source>name another file</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/workbook_grid.py" />
   <source>unpacks to more than a table of hauls can hold</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/workbook_grid.py" />
   <source>is not an .xlsx workbook</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/workbook_grid.py" />
   <source>row {number}, {heading}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/workbook_grid.py" />
   <source>holds a formula without its result</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/workbook_grid.py" />
   <source>open the workbook in a spreadsheet program and save it there</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/workbook_grid.py" />
   <source>workbook, sheet "{name}"{left}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/intake/workbook_grid.py" />
   <source>is a damaged workbook</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/backups.py" />
   <source>The backup {path} could not be verified; {logbook} was left as it is. Check the disk and try again.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/book.py" />
   <source>haul {number}, {column}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/book.py" />
   <source>entry of trip {name}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/book.py" />
   <source>details of trip {name}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/book.py" />
   <source>history of trap {label}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/book.py" />
   <source>import of {name}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/book.py" />
   <source>Undo</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/book.py" />
   <source>Redo</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/book.py" />
   <source>trip {name}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/book.py" />
   <source>Today's backup of the log could not be made: {error}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/book.py" />
   <source>delete of trip {name}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/book.py" />
   <source>trap {label}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/book.py" />
   <source>delete of trap {label}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/book.py" />
   <source>return from the bin</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/book.py" />
   <source>emptying of the bin</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/book.py" />
   <source>return to a backup</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/book.py" />
   <source>before restoring</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/book.py" />
   <source>{path} was opened for reading only; open it for writing to change it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/columns.py" />
   <source>degrees Celsius</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/columns.py" />
   <source>is not a whole number of crabs, zero or more</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/columns.py" />
   <source>write digits such as 3, or leave it empty when it was not recorded</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/columns.py" />
   <source>is more than one trap can hold ({max_count})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/columns.py" />
   <source>check the digits</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/columns.py" />
   <source>is not a number</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/columns.py" />
   <source>write a plain number in {unit}, such as 1.5</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/columns.py" />
   <source>is outside {low:g} to {high:g}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/columns.py" />
   <source>give it in {unit}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/columns.py" />
   <source>is not in the years {first} to {last}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/columns.py" />
   <source>check the year</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/columns.py" />
   <source>is a local time at a place whose time zone is not known</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/columns.py" />
   <source>add the offset from UTC, such as -04:00, or add the place to the place book</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/columns.py" />
   <source>does not exist in {key}: the clocks were put forward over it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/columns.py" />
   <source>correct the time, or add the offset from UTC, such as -05:00</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/files.py" />
   <source>is locked by another program; close that and try again</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/files.py" />
   <source>cannot be written because the disk is full; make room and try again</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/files.py" />
   <source>cannot be written; check the permissions of the file and its folder</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/files.py" />
   <source>cannot be opened; check the permissions of the file and its folder</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/files.py" />
   <source>cannot be opened; check that its folder exists and can be written</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/files.py" />
   <source>cannot be reached; check the disk or network drive and try again</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/files.py" />
   <source>{path} is damaged and was left exactly as it is. Keep a copy of it, and open a backup or import an exported haul table.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/files.py" />
   <source>{path} is not a logbook and was left as it is; name another file.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/files.py" />
   <source>{path} was written by a later version of Fullshell and was left as it is; open it with that version.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/files.py" />
   <source>{path} {sentences}. Nothing was changed.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/files.py" />
   <source>{path} cannot be opened ({reason}). Nothing was changed.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/files.py" />
   <source>{path}: there is no such file; check the name and the folder.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/files.py" />
   <source>before schema {latest_version}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/files.py" />
   <source>{path} is open in another window, so it is shown here for reading only. Close the other window to write here.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/journal.py" />
   <source>Undo {change}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/journal.py" />
   <source>Redo {change}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/portable.py" />
   <source>{path} is the log itself; choose another name for the copy.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/portable.py" />
   <source>The copy {path} is not whole; check the disk.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/reading.py" />
   <source>line {line}, {column}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/reading.py" />
   <source>is larger than a haul table can be ({max_table_bytes} MB)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/reading.py" />
   <source>there is no such file</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/reading.py" />
   <source>check the name and the folder</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/reading.py" />
   <source>is a folder, not a file</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/reading.py" />
   <source>name a haul table or logbook in it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/reading.py" />
   <source>cannot be read: {reason}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/reading.py" />
   <source>check the name and the permissions</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/reading.py" />
   <source>name a haul table (CSV)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rescuing.py" />
   <source>unknown place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rescuing.py" />
   <source>single crabs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rescuing.py" />
   <source>entries of trap histories</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rescuing.py" />
   <source>entries of the bin</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rescuing.py" />
   <source>The log was damaged. It was set aside whole as {name}, and what could be read was taken over: {hauls} hauls of {trips} trips; {missing}. The report is {report}.{newest}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rescuing.py" />
   <source>The log {path} was found damaged on {now:%d %b %Y %H:%M} UTC.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rescuing.py" />
   <source>The damaged file is kept as it was: {aside}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rescuing.py" />
   <source>Taken over into a new log:</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rescuing.py" />
   <source>What could be undone before can be undone no more.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rescuing.py" />
   <source>parts of it could not be read</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rescuing.py" />
   <source>nothing seems to be lost</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rescuing.py" />
   <source> A backup of {newest_backup:%d %b %Y} can be restored from the File menu.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rescuing.py" />
   <source>Could not be read (some of these may never have been there):</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rescuing.py" />
   <source>Every row could be read.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rescuing.py" />
   <source>The newest backup is of {newest_backup:%d %b %Y %H:%M} UTC.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rescuing.py" />
   <source>rescued trip {trip_id}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rescuing.py" />
   <source>the rescued log is not whole</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rescuing.py" />
   <source>{low} to {high}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rescuing.py" />
   <source>{table} {low}: {error}; it read {shown}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>crab {number}, {name}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>is not less than the whole crab ({weight_g:g} g)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>fill in how many were picked, or leave both empty</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>give every haul its trip's name, such as 14 Aug</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>light counts those of the picked that were light</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>use one of {trap_events}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>give a count from 0 to {max_count}, or none when it was not recorded</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>correct one of the two weights</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>holds a character no file can keep</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>remove it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>needs the number of crabs picked</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>give the trap the label it carries, such as A3</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>give the name of the place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>is not after the trap was set ({set_at})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>correct one of the two times</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>needs the number of crabs looked at</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>fill in judged, or leave both empty</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>is more than the females ({females})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>females counts every female, sponge those of them with eggs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>is no known word</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>use one of {words}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>correct it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>is not a possible count</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>give 0 to {max_count}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>is more than were picked ({picked})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>name the trip and its place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>give degrees Celsius</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>is not a likely year</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>is in the future</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>correct the date</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>is more than were judged ({judged})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/rules.py" />
   <source>light counts those of the judged that were light</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/table.py" />
   <source>save it as CSV in UTF-8</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/table.py" />
   <source>begin it with the header trip,place,spot,trap,...</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/table.py" />
   <source>line {line}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/table.py" />
   <source>has {cells} cells where the header has {columns} columns</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/table.py" />
   <source>put texts that hold {shown} in quotation marks, and one cell for each column</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/table.py" />
   <source>a column without a name holds values</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/table.py" />
   <source>the header has no column "{name}"{hint}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/table.py" />
   <source>name the columns as in trip,place,spot,trap,design,bait,...</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/table.py" />
   <source>is UTF-16 text</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/table.py" />
   <source>holds a zero byte; this is no text</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/table.py" />
   <source>; is "{near}" meant?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/table.py" />
   <source>line 1, {name}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/table.py" />
   <source>the column is there twice</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/table.py" />
   <source>remove or rename one</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/table.py" />
   <source>line 1</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/table.py" />
   <source>give the column a name in the header</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/table.py" />
   <source>is not UTF-8 text</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/workbook.py" />
   <source>Hauls</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/workbook.py" />
   <source>{path}: a sheet ends at {most_rows} rows; export the log as CSV.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/workbook.py" />
   <source>{path}: a text is longer than a cell can hold ("{text_}..."); export the log as CSV.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/writing.py" />
   <source>trap {trap}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/writing.py" />
   <source>a trap</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/logbook/writing.py" />
   <source>{label} of trip {name}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/molt/filling.py" />
   <source>Your last judged trip, {when}, was {one_in} light. {told}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/molt/filling.py" />
   <source>{value}light crabs fill in about {mean} days ({low} to {high}): from {day} it matters little.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/molt/filling.py" />
   <source>In the cold water to come, light crabs will not fill before spring.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/molt/filling.py" />
   <source>At {temperature} </source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/molt/filling.py" />
   <source>In this water </source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>Astronomical tide only: wind, rain and air pressure move real water. Not for navigation.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>Rules differ by place and change: check them with the agency before every trip.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>about {share}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>{share} ({low} to {high})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>about {mean} ({low}-{high})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>{height_m:.2f} m</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>{day:%a} {day.day} {day:%b}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>{degrees} colder</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>fewer than 1 in 50</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>nearly all</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>1 in {count}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>half</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>{tenths} in 10</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>{height_ft:.1f} ft</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>{whole} h</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>{whole} h ({soak_h:.1f} days)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>today</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>yesterday</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>{days} days ago</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>as warm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>{degrees} warmer</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>am</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>pm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>tomorrow</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/phrasing.py" />
   <source>in {days} days</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/book.py" />
   <source>did you mean {near}? </source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/book.py" />
   <source>there is no such file and no such place in the book</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/book.py" />
   <source>{hint}give a place file (.toml) or one of: </source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/build.py" />
   <source>name a place that has [water.constituents]</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/build.py" />
   <source>that place is itself an offset from another</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>did you mean {near}?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>give one of {known}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>the lowest level</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>the margin</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>there is no profile of that name</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>is {apart:.0f} hours from the clock of {key}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>correct one of them; west longitudes are negative</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>is not after from ({earliest:%H:%M})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>give the hours of one day, such as 05:30 to 20:30</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>the shortest soak is longer than the longest</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>exchange the two</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>the shortest soak is over the {allowed:g} hours that rules.max_soak_hours allows</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>shorten it, or check the rule</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>is more than the {most:g} that rules.max_traps allows</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>set fewer traps, or check the rule</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>is missing beside {given}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>give both in degrees, or neither</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>give both ends of the period</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>is also the name of spot {first}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>rename one</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>does not say when</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>give from and to, or weekdays, or all of them</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>{first} to {last}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>mixes a date with a day of every year</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>write both like 2026-02-11, or both like "02-11"</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>ends before it begins</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/checks.py" />
   <source>exchange from and to</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/editing.py" />
   <source>time zone</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/editing.py" />
   <source>clock of the lags</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/editing.py" />
   <source>node factors</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/editing.py" />
   <source>state of the constants</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/editing.py" />
   <source>closed periods</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/editing.py" />
   <source>free days</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/editing.py" />
   <source>is laid out in a way that cannot be changed here without harm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/editing.py" />
   <source>change it in a text editor; docs/place-file.md shows the usual layout</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>the lowest water level at which the boat launches, such as -0.1</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>the name of the spot, such as "grass edge"</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>the charted depth below the datum, such as 1.8</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>the height of the trap, such as 0.35 m</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>the position in degrees, north positive, such as 38.2034</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>the position in degrees, east positive, such as -76.1012</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>twelve water temperatures, January to December, in degrees Celsius (-2 to 40)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>why it is closed, such as "trap clean-up"</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>a date such as 2026-02-11, or "02-11" for every year</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>a date such as 2026-02-20, or "02-20" for every year</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>days of the week, such as ["Sun"]</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>the heading it stands under, such as "minimum size"</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>the rule in your own words, in quotes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>the date you last checked the rules, such as 2026-03-02</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>where you checked them, in quotes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>the most traps allowed, a whole number</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>the longest soak allowed in hours, such as 72</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>tables headed [[rules.notes]]</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>the days you are free, such as ["Fri", "Sat", "Sun"]</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>a time of day such as "05:30"</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>a time of day such as "20:30"</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>dates such as [2026-05-25]</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>dates such as [2026-07-04]</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>how many traps you set, a whole number</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>the shortest and the longest soak, such as [14, 50]</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>minutes from fetching bait to the first set, 0 to 600</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>minutes it takes to set all traps, up to 1440</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>minutes it takes to haul all traps, up to 1440</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>least water to keep over every trap, such as 0.3 m</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>format = 1; a later number needs a later Fullshell</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>the name of the place, such as "Otter Bight"</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>degrees from -90 to 90, north positive, such as 38.2</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>degrees from -180 to 180, east positive, such as -76.1</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>the name of the time zone, such as "America/New_York"</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>a species profile, such as "blue-crab"</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>true or false</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>a table headed [water]</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>a table headed [ramp]</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>tables headed [[spots]]</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>a table headed [temperature]</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>tables headed [[closures]]</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>a table headed [rules]</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>a table headed [free]</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_model.py" />
   <source>a table headed [trip]</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_values.py" />
   <source>is not a day of the week</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_values.py" />
   <source>give one of Mon, Tue, Wed, Thu, Fri, Sat, Sun</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_values.py" />
   <source>must be a date</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_values.py" />
   <source>is not a day of the year</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_values.py" />
   <source>contains characters that cannot be shown</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_values.py" />
   <source>must be text in quotes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_values.py" />
   <source>must be after the year {every_year}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_values.py" />
   <source>must be a time of day</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_values.py" />
   <source>is not a known time zone</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_values.py" />
   <source>{hint}give its full name, such as "America/New_York"</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/file_values.py" />
   <source>is not a clock with a fixed distance from UTC</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/keeping.py" />
   <source>give a name of 1 to {longest_name} ordinary characters</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/keeping.py" />
   <source>the nearest sample, {km:.0f} km away; or a file beside this one</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/keeping.py" />
   <source>{hint}give its full name, such as America/New_York</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/keeping.py" />
   <source>new place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/keeping.py" />
   <source>must be from -{most} to {most}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/keeping.py" />
   <source>is missing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/keeping.py" />
   <source>cannot be used as a name</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/keeping.py" />
   <source>your places already hold a file of that name</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/keeping.py" />
   <source>open that one, or rename it first; nothing was written over</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/keeping.py" />
   <source>cannot be written: {reason}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/keeping.py" />
   <source>check the folder's permissions</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/keeping.py" />
   <source>give degrees, north positive, such as 38.2</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/keeping.py" />
   <source>give degrees, east positive, such as -76.1</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/raw.py" />
   <source>{what} cannot be {height_m:.2f} m</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/raw.py" />
   <source>give {low:g} to {high:g} m, or correct water.units</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/reading.py" />
   <source>correct the line; text needs quotes, tables are headed [like-this]</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/reading.py" />
   <source>, column {position}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/reading.py" />
   <source> (the last)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/reading.py" />
   <source>line {number}{column}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/reading.py" />
   <source>is not TOML: {what}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/reading.py" />
   <source>tables or lists are nested too deeply</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/reading.py" />
   <source>write it as docs/place-file.md shows</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/reading.py" />
   <source>name a place file in it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/reading.py" />
   <source>is not an ordinary file</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/reading.py" />
   <source>name a place file (.toml)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/reading.py" />
   <source>is larger than a place file can be ({max_file_bytes} kB)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/reading.py" />
   <source>the file is not UTF-8 text</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/reading.py" />
   <source>save it as UTF-8 in a text editor</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/saving.py" />
   <source>has been changed by another program since it was read</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/saving.py" />
   <source>read it again first; your edit is kept as a draft</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/saving.py" />
   <source>cannot be read: {value}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/saving.py" />
   <source>cannot be written: {value}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>give mean level and amplitudes in one unit, that of water.units</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>the mean level</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>give the minutes added to the times, such as {example}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>constituents and offsets</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>the tide is given twice</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>keep either [water.constituents] or [water.offsets]</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>give the mean water level above the datum, such as 0.26</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>there is no amplitude above zero</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>add the constituents of the place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>amplitudes adding up to {total_m:.1f} m</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>no tide on Earth is that large</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>correct water.units (are these feet? then units = "ft") or the amplitudes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>{level_m:.2f} m</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>the lowest tide these amplitudes can make stays {level_m:.2f} m above zero, which a low-water datum does not allow</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>is given beside tabled differences, which take its place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>keep one of the two</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>nothing says what the tide is made of</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>add [water.constituents], or [water.offsets] from another place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>is the same constituent as {written_as}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>keep one of the two lines</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>is too low for a low-water datum and an M2 amplitude of {m2_m:.2f} m</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>both columns hold at the same times, twelve hours apart</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>give two times of day such as 00:00 and 06:00</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>both columns are for the same height</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>give the heights of mean springs and of mean neaps at the reference place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>is not a constituent this program knows</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_checks.py" />
   <source>{hint}correct the name or take the line out</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>the amplitude in the units of the file, 0 or more</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>the phase lag in degrees, 0 to 360</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>a time on the clock of the table, such as "06:00"</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>minutes added to the time, such as 23</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>the height at the reference place, such as 4.2</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>what is added to it, such as 0.3</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>the clock of the table, "UTC" or such as "UTC+01:00", never summer time</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>two columns such as { at = "00:00", minutes = 35 }</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>two columns such as { at = "06:00", minutes = 23 }</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>two columns such as { there = 4.2, add = 1.1 }</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>two columns such as { there = 0.4, add = 0.1 }</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>the place file (or place name) of the reference, such as "other-place.toml"</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>minutes added to the times of high water, such as 47</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>minutes added to the times of low water, such as 62</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>the ratio of the heights of high water, such as 0.86</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>the ratio of the heights of low water, such as 0.90</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>what is added to the heights of high water, such as -0.12</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>what is added to the heights of low water, such as -0.05</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>a table with clock, high_times, low_times and the heights</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>the unit of every height in this file, "m" or "ft"</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>what zero means, such as "MLLW"</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>the mean water level above the datum, such as 0.26</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>the clock the phase lags were worked out in, "UTC" or such as "UTC-05:00"</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>"yearly" (as agency tables do) or "continuous"</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>when the constants were issued, such as "2022"</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>where the constants are from, in quotes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>lines such as M2 = { amplitude = 0.21, phase = 61.0 }</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/water_tables.py" />
   <source>a table with reference, high_minutes and low_minutes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/wording.py" />
   <source>must be a table</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/wording.py" />
   <source>must be a list</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/wording.py" />
   <source>must be a number</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/wording.py" />
   <source>must be a whole number</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/wording.py" />
   <source>must be true or false</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/wording.py" />
   <source>must be an ordinary number, not nan or inf</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/wording.py" />
   <source>must be more than {gt:g}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/wording.py" />
   <source>must be {ge:g} or more</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/wording.py" />
   <source>must be less than {lt:g}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/wording.py" />
   <source>must be {le:g} or less</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/wording.py" />
   <source>must be {expected}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/wording.py" />
   <source>must be at most {max_length} characters long</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/wording.py" />
   <source>must have at least {min_length} entries</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/wording.py" />
   <source>must have at most {max_length} entries</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/wording.py" />
   <source>take it out; the keys here are {known}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/wording.py" />
   <source>a value as docs/place-file.md shows</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/wording.py" />
   <source>give {description}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/wording.py" />
   <source>a list of {count}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/wording.py" />
   <source>a very long number</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/wording.py" />
   <source>did you mean {near}? otherwise take it out</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sites/wording.py" />
   <source>is not a key of this table</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/sky/ephemeris.py" />
   <source>The sun and moon cannot be computed for {wrong}; choose dates from {first} to {last}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/fit.py" />
   <source>The record holds {size} levels over {days:.1f} days; a fit needs at least {shortest_days:.0f} days of hourly levels.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/fit.py" />
   <source>The record spans {days:.0f} days; a fit takes at most {longest_days:.0f}. Choose a year of it, the latest without large gaps.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/fit_words.py" />
   <source>{levels_used} hourly levels over {record_days:.0f} days: {strong} of {n_constituents} constituents that such a record tells apart stand out. Intervals hold the truth four times in five.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/fit_words.py" />
   <source>Mean level {mean:.{places}f} {unit} above the record's own zero. What the tide does not explain scatters by {scatter:.{places}f} {unit}: weather, mostly.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/fit_words.py" />
   <source>Under half a year P1 hides in K1 and K2 in S2, and the season (SA, SSA) is unknown and moves the mean level: other months are predicted worse than the intervals say.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/fit_words.py" />
   <source>Under a year the season (SA, SSA) is not well known.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/fit_words.py" />
   <source>{mean:.1f} ± {degrees:.1f}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/fit_words.py" />
   <source>too weak to tell from none</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/offset.py" />
   <source>The reference place has no high and low waters to take offsets from; choose a reference place with a tide.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/offset_fit.py" />
   <source>From {count} turns the times are {known} (to about {value} min) and single heights differ from the fit by about {scatter_m} cm.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/offset_fit.py" />
   <source>{waters} the reference place's; note at least {fewest} of each kind, with their heights.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/offset_fit.py" />
   <source>well known</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/offset_fit.py" />
   <source>{text_} More observed turns, on calm days, would help.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/offset_fit.py" />
   <source>observed high water fits</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/offset_fit.py" />
   <source>observed high waters fit</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/offset_fit.py" />
   <source>observed low water fits</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/offset_fit.py" />
   <source>observed low waters fit</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/offset_fit.py" />
   <source>roughly known</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/offset_fit.py" />
   <source>hardly known</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/reading.py" />
   <source>has no column {listed}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/reading.py" />
   <source>begin the file with the line {columns}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/reading.py" />
   <source>give a number in {unit}, or nothing when only the time was seen</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/reading.py" />
   <source>write "high" or "low"</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/reading.py" />
   <source>line {line_num}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/reading.py" />
   <source>write it like 2026-07-04T06:12 (local) or 2026-07-04T10:12Z</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/reading.py" />
   <source>look for a quote left open</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/reading.py" />
   <source>it is not text in UTF-8</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/reading.py" />
   <source>cannot be read: {known}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/reading.py" />
   <source>give a CSV file in UTF-8</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/reading.py" />
   <source>is not a height</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/reading.py" />
   <source>is neither</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/summary.py" />
   <source>semidiurnal: two tides a day, nearly alike</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/summary.py" />
   <source>mixed, mainly semidiurnal: two unequal tides a day</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/summary.py" />
   <source>mixed, mainly diurnal: one or two very unequal tides a day</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/summary.py" />
   <source>diurnal: one tide a day</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/suspicions.py" />
   <source>Observed waters come {hours_and_minutes} {side} than predicted.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/suspicions.py" />
   <source>{hours} h {minutes:02d} min</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/suspicions.py" />
   <source>{whole} min</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/suspicions.py" />
   <source>The tide would range over {height}, more than anywhere on Earth.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/suspicions.py" />
   <source>Check whether the amplitudes are in feet or centimetres and say so in units.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/suspicions.py" />
   <source>{datum} should be the zero of this place, but the predicted {datum} stands at {height}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/suspicions.py" />
   <source>Check mean_level: it is the mean sea level above the datum, in the file's units.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/suspicions.py" />
   <source>Neither SA nor SSA is given: the water's seasonal rise and fall, often 5 to 15 cm, is left out.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/suspicions.py" />
   <source>Add SA and SSA when the agency publishes them.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/suspicions.py" />
   <source>Observed waters stand {height} {side} the predicted ones on average, high and low alike.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/suspicions.py" />
   <source>Check that both count from the same zero, and that mean_level belongs to it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/suspicions.py" />
   <source>What is left over rises and falls by {height} with the season, and SA is not among the constants.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/suspicions.py" />
   <source>Add SA and SSA from the agency's list.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/suspicions.py" />
   <source>{seen} That is what lags worked out in this place's standard time would do.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/suspicions.py" />
   <source>Set phase_reference to "{clock}".</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/suspicions.py" />
   <source>Observed heights vary {scale:.2f} times as much as the predicted ones: numbers in {truth} were read as {said}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/suspicions.py" />
   <source>Set units to {truth} for the constants, or check the unit of the observations.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/suspicions.py" />
   <source>{seen} One hour points to summer time.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/suspicions.py" />
   <source>Check whether the observations were noted in standard or in summer time.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/suspicions.py" />
   <source>{seen} Lags worked out on a clock at {best} would fit best.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/suspicions.py" />
   <source>Ask for the clock of the phase lags, and check date and clock of the observations.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/tides/tide.py" />
   <source>{year} is outside the years that tides are computed for; choose dates from {first_year} to {last_year}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/grouping.py" />
   <source>{metre} to {next_metre} m</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/grouping.py" />
   <source>choose one of {measures}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/grouping.py" />
   <source>choose one of {listed}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/grouping.py" />
   <source>under 18 h</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/grouping.py" />
   <source>18 to 30 h</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/grouping.py" />
   <source>30 to 54 h</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/grouping.py" />
   <source>54 h and more</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/grouping.py" />
   <source>{found} entrances</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/grouping.py" />
   <source>cannot be compared</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/grouping.py" />
   <source>is no way to group hauls</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/layout.py" />
   <source> One trip alone settles nothing: move the traps again next time.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/layout.py" />
   <source>One design only: there is nothing to compare, so the traps are dealt by lot.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/layout.py" />
   <source>After this trip{how} the log tells the designs apart {efficiency:.0%} as well as so many hauls could at best</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/layout.py" />
   <source>{value:.0%} {words}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/layout.py" />
   <source>, as you moved the traps,</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/layout.py" />
   <source>as proposed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/layout.py" />
   <source>with the traps left where they are</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/layout.py" />
   <source>on average when dealt at random</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/permutation.py" />
   <source>permutation within trips</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/permutation.py" />
   <source>permutation within trips (large-sample limit)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/permutation.py" />
   <source>none: no trip had hauls of two groups to compare</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/settle_text.py" />
   <source>more haul</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/settle_text.py" />
   <source>more hauls</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/settle_text.py" />
   <source>About {hauls} of each{ends}{trips}, dealt evenly over spots and trips, would bring a difference of {difference:g} times to light 4 times in 5, or show that there is none.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/settle_text.py" />
   <source>There are hauls enough to show a difference of {difference:g} times; what is seen is smaller than that, or not the same everywhere.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/settle_text.py" />
   <source> ({low} to {high})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/settle_text.py" />
   <source>, about {plural} like yours</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/settle_text.py" />
   <source>The gap seen so far is smaller, {ratio:.1f} times: to be sure of one like it takes about {plural} of each.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/settle_text.py" />
   <source>At your pace the next trip ends about {first}, and the last of these {plural} about {days:%B %Y}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/settle_text.py" />
   <source>Nothing more is needed for this question.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/settle_text.py" />
   <source>Differences smaller than about {can_hide:.1f} times may still hide in these hauls.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/settle_text.py" />
   <source>Rates are for a soak of {common_soak_h:.0f} h.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/settle_text.py" />
   <source>At your pace that trip ends about {first}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/settle_text.py" />
   <source>Log counted hauls of two groups or more on the same trips to begin.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/settle_text.py" />
   <source>trip</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/settle_text.py" />
   <source>trips</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>{hauls} in {trips}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>Too early to tell, after {basis}: {gap}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>Chance alone makes a gap as wide as this {one_in} times.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>Hardly ever in the same {where}: {shown}{rest}. A difference between them may be the {where}'s doing.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>{one:.1f} {unit} a haul from {name} and {two:.1f} from {other_name}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>Nothing to compare yet: {basis}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>{early}, but never side by side in one trip.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>{early}, but the layout cannot tell the groups from where or when they were set.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>Chance alone hardly ever makes a gap as wide as this.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>Settled, after {basis}: no difference of {care_ratio:g} times is left to find ({gap}). {chance}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>Settled, after {basis}: {better} gives about {ratio:.1f} times what {other} gives ({low:.1f} to {high:.1f}){worth}; {gap}. {chance}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>They differ, but which is best is not clear after {basis}: {gap}. {chance}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>Leaning towards {better}, after {basis}: {gap}. {chance}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>Fewer than {few_hauls} counted hauls: {listed}. One haul is not judged.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>{hauls} without a count left out: not recorded is not zero.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>Spots are not all recorded, so a good spot may pass for a good trap.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>The soak of {share} hauls is not known; they are taken to be like the others.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>Soaks differ: {short} mostly {short_h:.0f} h, {long} {long_h:.0f} h. Rates are brought to one soak by a curve; compare like soaks to be sure.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>{one} and {other}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>, and {more} more pairs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>{one:.0%} light from {name} and {two:.0%} from {other_name}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>counted haul</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>counted hauls</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>, less than the {care_ratio:g} worth caring about</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source> and {n_names} more</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>haul</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>hauls</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trials/verdict.py" />
   <source>One trip alone: it says how that day went, no more.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/allowed.py" />
   <source>Mondays</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/allowed.py" />
   <source>Tuesdays</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/allowed.py" />
   <source>Wednesdays</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/allowed.py" />
   <source>Thursdays</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/allowed.py" />
   <source>Fridays</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/allowed.py" />
   <source>Saturdays</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/allowed.py" />
   <source>Sundays</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/allowed.py" />
   <source>{weekdays} are not free</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/allowed.py" />
   <source>marked as not free</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/calendar_days.py" />
   <source>export the calendar again as an iCalendar file (.ics)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/calendar_days.py" />
   <source>is not a calendar ({error})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/calendar_days.py" />
   <source>cannot be understood ({error})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/calendar_days.py" />
   <source>is too large for a calendar</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/calendar_days.py" />
   <source>is not a calendar</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/calendar_days.py" />
   <source>entry {number}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/candidates.py" />
   <source>outside your free days and hours</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/candidates.py" />
   <source>a trap in the water on a closed day</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/candidates.py" />
   <source>set or haul not wholly in daylight</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/candidates.py" />
   <source>too little water at the ramp</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/candidates.py" />
   <source>soak too short or too long</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/candidates.py" />
   <source>a trap not covered at the lowest water</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>your free hours</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>the open days</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>the hours with water at the ramp</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>the soaks allowed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>{name} promises {keepers}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source> {name} has the more light crabs.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>{fewer} fewer than the best plan{tail}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>{told}: too near to tell apart beforehand. Take the one that suits you.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>plan {rank}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>your own plan</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>With a {outing} on {day} the best {other} is {day_clock}: {count} full keepers{cost}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>as many as the best plan</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>, too near to tell apart</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>closed ({why_closed})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>it is over, or too near the last day looked at</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>Soak</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>Full keepers</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>Light crabs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>Least cover</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>To look out for</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>more full keeper</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>more full keepers</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>Both promise as many full keepers</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>No {outing} on {day}: {why_not}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/explaining.py" />
   <source>not checked</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/looking_back.py" />
   <source>no {by} told</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/promises.py" />
   <source>{trips} forecast {forecast} full keepers in all; {came} came. {inside} of {n} came within the range forecast; in the long run 8 of 10 should.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/promises.py" />
   <source>No trip begun from a plan has been counted and judged yet. What its plan forecast is kept with it, and will be held here against what came.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/promises.py" />
   <source>1 trip begun from a plan was</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/promises.py" />
   <source>{n} trips begun from plans were</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/similar.py" />
   <source>day</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/similar.py" />
   <source>days</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/similar.py" />
   <source>same moon</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/similar.py" />
   <source>moon {days} apart</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/similar.py" />
   <source>same time of year</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/similar.py" />
   <source>{days} apart in the year</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/similar.py" />
   <source>water {degrees_apart}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/similar.py" />
   <source>last light trip {days} before (now {now})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/similar.py" />
   <source>a light trip {days} before, none now</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/similar.py" />
   <source>no light trip before it, one {days} before now</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>All {number} spots stay covered, the shallowest ({spot}) by {least} at {at}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>Traps fill more and more slowly: a day would bring about {day_one} of these {total}, the other {soak_h} hours the rest.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>Set any time from {first} to {last}{cost}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>from {before} to {after}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>The water falls while you haul, {levels}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>learned from {trips} here</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>from published catch rates, as no trip here tells the catch yet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>{count} full keepers from {traps}, {source}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>Light crabs {light}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>{span} of daylight left when the haul is over.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>The spot stays covered, by {least} at {at}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>; the latest would cost {keepers}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>{kind} at about {clock} while you haul; slack can come earlier or later than that.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>The water hardly changes while you haul ({height}).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>The water rises while you haul, {levels}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>A day or more</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>{rest} min</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>Minutes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>At the ramp at least {height} more water than you need, out and back on both days.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>No ramp level entered: whether you can launch was not checked.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>Little daylight left after the haul: begin on time and carry lights.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>The clocks change between set and haul: set by {set_zone}, haul by {haul_zone}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>Water temperature unknown: the catch was not lowered for cold water.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>No logged trip tells yet how light crabs are here: the share is a general one.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>No date entered for when you checked the rules here: check with the agency.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>High water</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>Low water</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>Wish for {haul_water} water at the haul: {words}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>Wish for a haul {haul_time} in the day: {at}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>Only {height} over the shallowest trap at the lowest water: wind and high pressure can take that away. Check the weather.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>Water about {temperature}: crabs hardly move, and few enter a trap (how few is a judgement).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>Closed from {day} ({why}): every trap must be out before it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>You last checked the rules here {months} ago: check with the agency again.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>full keeper</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>full keepers</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>Water about {temperature} and a soak of {soak}: crabs weaken and fight in warm traps (common practice is to haul sooner).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>month</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>months</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>met</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/trips/wording.py" />
   <source>not met</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/backups_dialog.py" />
   <source>Backups of the log</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/backups_dialog.py" />
   <source>Backups of the log, newest first</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/backups_dialog.py" />
   <source>Go back to this one</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/backups_dialog.py" />
   <source>Another file…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/backups_dialog.py" />
   <source>A backup that you keep elsewhere</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/backups_dialog.py" />
   <source>Close</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/backups_dialog.py" />
   <source>A backup is made on each day of use, and before anything that changes the whole log. Going back first makes a backup of the log as it is now, so that you can return. They are in {backup_folder}: copy that folder elsewhere now and then.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/backups_dialog.py" />
   <source>Go back to a backup</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/backups_dialog.py" />
   <source>Logs (*.logbook)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/backups_dialog.py" />
   <source>Made (UTC)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/backups_dialog.py" />
   <source>Why</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/backups_dialog.py" />
   <source>Size</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/backups_dialog.py" />
   <source>This log is shown from a file that Fullshell does not change.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/backups_dialog.py" />
   <source>The log is again what the backup holds. What it was until now is the newest backup, should you want it back.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/backups_dialog.py" />
   <source>{day} {at:%b %Y %H:%M}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/backups_dialog.py" />
   <source>{size:.1f} MB</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/backups_dialog.py" />
   <source>day of use</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/bin_dialog.py" />
   <source>Bin of the log</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/bin_dialog.py" />
   <source>Deleted trips and hauls, newest first</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/bin_dialog.py" />
   <source>Put back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/bin_dialog.py" />
   <source>Back into the log, with all it held</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/bin_dialog.py" />
   <source>Empty the bin…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/bin_dialog.py" />
   <source>Empty the bin</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/bin_dialog.py" />
   <source>Let go of {entries} for good?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/bin_dialog.py" />
   <source>What</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/bin_dialog.py" />
   <source>Deleted</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/bin_dialog.py" />
   <source>Deleted trips and traps wait here, with all they held, until you empty the bin.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/bin_dialog.py" />
   <source>The bin is empty. Deleted trips and traps would wait here until you empty it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/bin_dialog.py" />
   <source>{day} {at:%b %Y}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/bin_dialog.py" />
   <source>deleted entry</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/bin_dialog.py" />
   <source>deleted entries</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/charts.py" />
   <source>{local:%a} {local.day}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/charts.py" />
   <source>{local.day} {local:%b}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/charts.py" />
   <source>{local:%b}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/checklist_cards.py" />
   <source>a rule you entered for this place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/checklist_cards.py" />
   <source>worked out for this plan</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/checklist_cards.py" />
   <source>common practice</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/checkup_dialog.py" />
   <source>Looking at the installation</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/checkup_dialog.py" />
   <source>Check this installation</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/checkup_dialog.py" />
   <source>Looking at Python, Qt, files, folders and your log…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/checkup_dialog.py" />
   <source>Findings</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/checkup_dialog.py" />
   <source>Copy report</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/checkup_dialog.py" />
   <source>Versions and findings, without any folder, name or place of yours</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/checkup_dialog.py" />
   <source>Copied.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/compare_dialog.py" />
   <source>First plan</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/compare_dialog.py" />
   <source>Second plan</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/compare_dialog.py" />
   <source>Compare two plans</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/compare_dialog.py" />
   <source>There are no two plans to compare.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/crab_cells.py" />
   <source>Sex</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/crab_cells.py" />
   <source>Width (mm)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/crab_cells.py" />
   <source>Measured</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/crab_cells.py" />
   <source>Shell</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/crab_cells.py" />
   <source>Peeler sign</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/crab_cells.py" />
   <source>Abdomen</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/crab_cells.py" />
   <source>Fullness</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/crab_cells.py" />
   <source>Picked meat (g)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/crab_cells.py" />
   <source>Notes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/crab_cells.py" />
   <source>is not one of the words</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/crab_cells.py" />
   <source>write {words}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/crab_cells.py" />
   <source>write digits, such as 142</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/crabs_dialog.py" />
   <source>Single crabs, one row each</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/crabs_dialog.py" />
   <source>Why a cell was not saved</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/crabs_dialog.py" />
   <source>Whatever you looked at; the rest stays empty. Words may be cut short: pap for papershell. An empty row at the end takes the next crab; Ctrl+Delete takes one out. Where the trap has no judged count, the crabs graded here are it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/crabs_dialog.py" />
   <source>{heading} of crab {row}: {text_}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/crabs_dialog.py" />
   <source>Single crabs of trap {trap}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/crabs_dialog.py" />
   <source>Single crabs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/crabs_dialog.py" />
   <source>removal of a crab</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/crabs_dialog.py" />
   <source>not recorded</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/crabs_dialog.py" />
   <source>{split} of crab {row}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/crabs_dialog.py" />
   <source>Not saved. {value} {what}: {remedy}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/dates.py" />
   <source>Season</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/dates.py" />
   <source>Year</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/dates.py" />
   <source>No place is open yet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/dates.py" />
   <source>The chosen day in words</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/dates.py" />
   <source>Undo move</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/dates.py" />
   <source>Have the plan before back  (Ctrl+Z)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/dates.py" />
   <source>Today</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/dates.py" />
   <source>Choose today  (Home)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/dates.py" />
   <source>Fullness from published biology alone</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/dates.py" />
   <source>Fullness learned from {trips} logged trips</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/dates.py" />
   <source>The soonest of the dates as good as any in 12 weeks. </source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/dates.py" />
   <source>{ahead}{basis}; ranges hold 8 times in 10.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/dates.py" />
   <source>The chosen plan, and past trips like the day</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/dates.py" />
   <source>Chosen plan</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/dates.py" />
   <source>Days and plans</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/dates.py" />
   <source>Show</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/dates.py" />
   <source>Show {label} from just before today</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/dates.py" />
   <source>The days are not worked out yet.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/dates.py" />
   <source>Past trips like it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/dates.py" />
   <source>No set and haul in the next 12 weeks keeps every limit</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/dates.py" />
   <source>Set {set_at}, haul {haul_at}, {count} full keepers</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/deck_button.py" />
   <source>To tally on deck</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/deck_button.py" />
   <source>Take this trip's traps along, to count crabs on paper or on a phone</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/deck_button.py" />
   <source>Tally sheet to print…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/deck_button.py" />
   <source>Tally page for a phone…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/deck_button.py" />
   <source>Save the tally sheet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/deck_button.py" />
   <source>PDF (*.pdf)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/deck_button.py" />
   <source>Tally sheet written to {}. Print it from there.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/deck_button.py" />
   <source>Save the tally page</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/deck_button.py" />
   <source>Web page (*.html)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/deck_button.py" />
   <source>Tally page written to {}. Send that file to the phone and open it there, at home: it needs no network afterwards. What it counts comes back through Import in Log hauls.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/deck_button.py" />
   <source>Writing the tally</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/edit_pane.py" />
   <source>{month_days} days from {day} {first.year}, {key}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/edit_pane.py" />
   <source>Month of water of the edited place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/edit_pane.py" />
   <source>Checking the water</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/edit_pane.py" />
   <source> Dotted: as saved. Line: as edited.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/edit_pane.py" />
   <source> Open marks: what you saw.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/edit_pane.py" />
   <source>The water this makes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/edit_pane.py" />
   <source>No water yet: {things} to put right, marked with ⚠ beside the fields. Nothing is saved until then.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/edit_pane.py" />
   <source>Working out range, kind and extremes…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/edit_pane.py" />
   <source>thing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/edit_pane.py" />
   <source>things</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/edit_preview.py" />
   <source>Tide: {tide_type} (form number {form_number:.2f}).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/edit_preview.py" />
   <source>Range {mean} on average, springs {springs}, neaps {neaps}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/edit_preview.py" />
   <source>Highest {highest}, lowest {lowest} in the 19 years from {first_year}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/edit_preview.py" />
   <source>The water never turns here.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/edit_preview.py" />
   <source>choose another day</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/edit_section.py" />
   <source>{value:.10g}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/edit_section.py" />
   <source> (found {value})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/effects_panel.py" />
   <source>Worth caring about, light crabs of 100</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/effects_panel.py" />
   <source>A difference &amp;worth caring about, in light crabs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/effects_panel.py" />
   <source>What moves the share of light crabs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/effects_panel.py" />
   <source>In words</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/effects_panel.py" />
   <source>swing in light crabs of 100</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/effects_panel.py" />
   <source>worth caring about</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/effects_panel.py" />
   <source>From the best day to the worst</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/effects_panel.py" />
   <source>What matters</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/effects_panel.py" />
   <source>Dot: best estimate. Bar: its 80% interval. Dashed: worth caring about.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence.py" />
   <source>What your own trips say will stand here: whether moon, season or recent trips move how full the crabs are, how forecasts did, and which traps catch more. Nothing is logged yet.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence.py" />
   <source>No trip logged here says yet how full its crabs were. Judge a few crabs of every haul and enter how many were light: then what moves that, and how forecasts did, stands here.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence.py" />
   <source>Kinds of evidence</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence.py" />
   <source>Moon and season</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence.py" />
   <source>How forecasts did</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence.py" />
   <source>Traps compared</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence.py" />
   <source>Log hauls</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence.py" />
   <source>Learning from the log</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence.py" />
   <source>Weigh evidence</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence.py" />
   <source>{name}: {n_outcomes} logged trips, {judged} crabs judged for fullness.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>Season and water</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>Moon</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>Recent trips</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>This place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>Swing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>Worth caring about</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>Trips</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>Crabs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>Trip</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>Forecast</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>Came</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>Forecast by</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>Brier score</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>Log score</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>in every month that you fish</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>spread over the whole moon</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>some of them within two weeks after a light one</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>here and at another place of yours</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>light crabs vary by about {points} of 100 between its best and worst days</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>{trips} and {crabs}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>{name}: {verdict}. That it makes {care_points} of 100 or more: {chance}, from {basis}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>About {trips}, {how}, would settle it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>{trips} forecast from earlier trips only</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>{basis}: the model {parts}.{advice}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>{mean:.0f} ({low:.0f} to {high:.0f})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>{name}: no judged trip yet, so this is what is known in general: {size}. Judge crabs for fullness when you haul, and your own log will speak.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>it matters: {size}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source> So few trips add little to what is known in general.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>What would settle it: more trips with crabs judged, {how}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>More than {most_trips_said} more trips, {how}, would be needed to settle it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>almost sure</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>hardly possible</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>No past trip could be forecast from earlier ones yet. From the second judged trip on, how forecasts did stands here.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>{basis}: too few to say which forecast is better.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source> Do not lean on it more than on those.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>{value:.3f}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>{mean:.0f} of 100</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>{low:.0f} to {high:.0f}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>most likely not worth caring about: {size}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>your log cannot tell yet. Best estimate: {size}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>judged crab</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>judged crabs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>more trip</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>more trips</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>past trip</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>past trips</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>{mean:.0%} ({low:.0%} to {high:.0%})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>{forecast:.0%}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>{light:.0%}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>did better than</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>did no better than</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>did worse than</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>this model</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>the season alone</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/evidence_rows.py" />
   <source>the running average</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/fault_dialog.py" />
   <source>Fullshell itself went wrong{where}. You did nothing wrong, and what you logged is kept.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/fault_dialog.py" />
   <source>Next: close this and go on; the window still works. If it goes wrong again, close Fullshell and start it anew. To have it put right, copy the report and send it to whoever keeps your Fullshell up to date. Nothing is sent by itself.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/fault_dialog.py" />
   <source>The report holds versions, the view that was open and where in the program it went wrong. It holds no name, no folder of yours, no place and nothing from your log.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/fault_dialog.py" />
   <source>Fullshell stopped in the middle of its work the last time. What you logged until then is kept.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/fault_dialog.py" />
   <source>Next: look at the last trip you were typing and go on. If it happens again, open Help, Check this installation. To have it put right, copy the report and send it to whoever keeps your Fullshell up to date. Nothing is sent by itself.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/fault_dialog.py" />
   <source>Something went wrong</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/fault_dialog.py" />
   <source>Report</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/fault_dialog.py" />
   <source>Add the error's own words (look whether they name anything yours)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/fault_dialog.py" />
   <source>Put the report on the clipboard</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/fault_dialog.py" />
   <source>Save report…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/fault_dialog.py" />
   <source>Write the report to a text file</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/fault_dialog.py" />
   <source> while {view} was open</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/fault_dialog.py" />
   <source>
In its own words
{own_words}
</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/fault_dialog.py" />
   <source>Save the report</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/fault_dialog.py" />
   <source>Text (*.txt)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/fault_dialog.py" />
   <source>Saved.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/fault_dialog.py" />
   <source>Not saved: {strerror}. Choose another folder.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/fault_front.py" />
   <source>The same thing went wrong again inside Fullshell. Close it and start it anew; the report is kept, and Help, Check this installation tells where.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/free_section.py" />
   <source>Calendars (*.ics *.ical *.ifb);;All files (*)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/free_section.py" />
   <source>more day</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/free_section.py" />
   <source>more days</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/free_section.py" />
   <source>05:30; empty: from midnight</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/free_section.py" />
   <source>20:30; empty: to midnight</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/free_section.py" />
   <source>Take days from a calendar file…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/free_section.py" />
   <source>Days on which the calendar has something on in your hours are not free</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/free_section.py" />
   <source>Days on which the calendar has an entry in your hours are free</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/free_section.py" />
   <source>Take days that are not free from a calendar file</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/free_section.py" />
   <source>Take further free days from a calendar file</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/free_section.py" />
   <source>Days of the week</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/free_section.py" />
   <source>&amp;From (time of day)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/free_section.py" />
   <source>&amp;To (time of day)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/free_section.py" />
   <source />
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/free_section.py" />
   <source>Take days from a calendar</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/free_section.py" />
   <source>Reading the calendar</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/free_section.py" />
   <source>Further free days</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/free_section.py" />
   <source>Days not free</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/free_section.py" />
   <source>such as 2026-05-25, 2026-07-03</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/free_section.py" />
   <source>Free on {text_}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/free_section.py" />
   <source>When you can be on the water</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/free_section.py" />
   <source>Plans set and haul only then, and leave you the time to fetch the bait.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/free_section.py" />
   <source>Not free after all</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/free_section.py" />
   <source>Free besides</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/free_section.py" />
   <source>{name}: {more} marked as not free, in the year from today.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/free_section.py" />
   <source>{name}: {more} marked as free, in the year from today.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/free_section.py" />
   <source>Give the place a time zone first: a calendar's hours need it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_cells.py" />
   <source>Not saved. {problem}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_cells.py" />
   <source>The trap's label</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_cells.py" />
   <source>Spot</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_cells.py" />
   <source>Where it stood</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_cells.py" />
   <source>When it went in; + and − move it by five minutes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_cells.py" />
   <source>When it came up; + and − move it by five minutes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_cells.py" />
   <source>Legal crabs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_cells.py" />
   <source>Undersize crabs, freed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_cells.py" />
   <source>Every female</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_cells.py" />
   <source>Sponge</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_cells.py" />
   <source>Those of the females with eggs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_cells.py" />
   <source>Legal crabs looked at for fullness</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_cells.py" />
   <source>Those of the judged that were light</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_cells.py" />
   <source>Design</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_cells.py" />
   <source>The kind of trap</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_cells.py" />
   <source>Bait</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_cells.py" />
   <source>What it was baited with</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_cells.py" />
   <source>Depth</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_cells.py" />
   <source>Depth of water where it stood</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_cells.py" />
   <source>Other kinds</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_cells.py" />
   <source>Other species, as you would write them</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_cells.py" />
   <source>Anything else</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_cells.py" />
   <source>{local.day} {local:%b} {clock}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_cells.py" />
   <source>Trap {trap}, </source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_cells.py" />
   <source>is no date</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_cells.py" />
   <source>write it as day, month and clock, such as 22 Nov 7:40</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_model.py" />
   <source>{what} of {words}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_model.py" />
   <source>{heading} of trap {trap}: {text_}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_model.py" />
   <source>{n_cells} cells</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_model.py" />
   <source>trap {pop}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_model.py" />
   <source>{n_traps} traps</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_rows.py" />
   <source>No time above to start from: type one, such as 7:40.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_rows.py" />
   <source>Not saved. Trap {trap} would come up before it went in.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_table.py" />
   <source>Tab: next cell. Enter: next trap. Digits: type. + and −: five minutes. Delete: not recorded. Ctrl+D: as the trap above. Ctrl+Enter: add a trap. Ctrl+K: single crabs. Ctrl+Tab: leave the table.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_table.py" />
   <source>Hauls of the trip, one row a trap</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_words.py" />
   <source>The plan forecast {keepers} full keepers; light crabs {light}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_words.py" />
   <source>{traps}, nothing counted yet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_words.py" />
   <source>Not recorded yet: {parts}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_words.py" />
   <source>every trap</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_words.py" />
   <source>{hauls:,} hauls</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_words.py" />
   <source> ({sums} sponge)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_words.py" />
   <source>{sums} females{sponge}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_words.py" />
   <source>{judged} judged, {lights} light{share}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_words.py" />
   <source>in the kitchen {kitchen_picked} picked, {light} light</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_words.py" />
   <source>{picked} crabs were picked in the kitchen, but {keepers} were kept. Is that right?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_words.py" />
   <source>Trap {named}: {what}. Are the dates right?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_words.py" />
   <source>{keepers:,} keepers</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_words.py" />
   <source>{crabs:,} judged, light {light_words}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_words.py" />
   <source>row {number}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_words.py" />
   <source>{heading} of {named}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_words.py" />
   <source>Trap {trap} is there {count} times with the same haul time.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_words.py" />
   <source>Crabs are counted for a haul that lies ahead. Are the dates right?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_words.py" />
   <source>The times are the plan's and still lie ahead: correct them as you set and haul.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/haul_words.py" />
   <source>Trap {trap}: {count} {field} in one trap. Is that right?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/hauls.py" />
   <source>Try again</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/hauls.py" />
   <source>Open the log for writing, if the other window is closed by now</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/hauls.py" />
   <source>New trip today</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/hauls.py" />
   <source>A trip hauled today, with the traps and spots of the last one</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/hauls.py" />
   <source>Traps…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/hauls.py" />
   <source>Every trap, what befell it, what it gave</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/hauls.py" />
   <source>Bin…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/hauls.py" />
   <source>What was deleted, until you empty it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/hauls.py" />
   <source>Look back…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/hauls.py" />
   <source>Catch and light crabs over time and by kind</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/hauls.py" />
   <source>Delete trip</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/hauls.py" />
   <source>Into the bin; Undo in the Edit menu brings it back at once</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/hauls.py" />
   <source>Import a haul table…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/hauls.py" />
   <source>Log hauls </source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/hauls.py" />
   <source>No trip is logged yet. Every trip will be a row here, with what each trap gave: forecasts, plans and trap comparisons learn from it. Begin with a new trip above, or bring in a haul table (CSV) that you already keep.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/hauls.py" />
   <source>⚠ {reason}This log is open for reading only, so nothing can be entered here.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/hauls.py" />
   <source>Laying out the traps</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/hauls.py" />
   <source>Entries are not in the log yet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/hauls.py" />
   <source>The log could not be written, and these trips hold entries that are only here: {listed}. Quit and lose them?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/hauls.py" />
   <source>New trip from {plan_name} ({day})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/hauls.py" />
   <source>Rows with the plan's times and spots and your traps</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/hauls.py" />
   <source>start of trip {trip}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/help_page.py" />
   <source>Page of the guide</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/help_window.py" />
   <source>Guide - Fullshell</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/help_window.py" />
   <source>Message</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/help_window.py" />
   <source>Find in the guide</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/help_window.py" />
   <source>Back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/help_window.py" />
   <source>The page before (Alt+Left)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/help_window.py" />
   <source>Forward</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/help_window.py" />
   <source>The page after it (Alt+Right)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/help_window.py" />
   <source>Contents</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/help_window.py" />
   <source>The first page</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/help_window.py" />
   <source>Find next</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/help_window.py" />
   <source>Further down, or on (F3)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/help_window.py" />
   <source>Find previous</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/help_window.py" />
   <source>Further up (Shift+F3)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/help_window.py" />
   <source>Contents of the guide</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/help_window.py" />
   <source>{address} is outside the guide; Fullshell opens nothing there.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/help_window.py" />
   <source>“{words}” is nowhere in the guide.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/intake_dialog.py" />
   <source>3/4 is 3 April</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/intake_dialog.py" />
   <source>3/4 is 4 March</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/intake_dialog.py" />
   <source>Celsius</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/intake_dialog.py" />
   <source>Fahrenheit</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/intake_dialog.py" />
   <source>as they seem</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/intake_dialog.py" />
   <source>Windows</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/intake_dialog.py" />
   <source>old Mac</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/intake_dialog.py" />
   <source>Columns of the table, and what they mean</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/intake_dialog.py" />
   <source>Where a row names no place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/intake_dialog.py" />
   <source>Such as 7:30, for rows that have only a date</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/intake_dialog.py" />
   <source>Such as 17:00, for rows that have only a date</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/intake_dialog.py" />
   <source>Every problem of the table</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/intake_dialog.py" />
   <source>Take nothing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/intake_dialog.py" />
   <source>{name} is kept as it is: another column has its meaning now.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/intake_dialog.py" />
   <source>⚠ {n_problems} of its lines cannot be taken. Nothing is in the log yet: mend the table and import it again, or take the others alone.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/intake_dialog.py" />
   <source>In the table</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/intake_dialog.py" />
   <source>First values</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/intake_dialog.py" />
   <source>Means</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/intake_dialog.py" />
   <source>Place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/intake_dialog.py" />
   <source>Day and month</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/intake_dialog.py" />
   <source>Usual time of hauling</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/intake_dialog.py" />
   <source>Usual time of setting</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/intake_dialog.py" />
   <source>Depths are in</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/intake_dialog.py" />
   <source>Water is in</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/intake_dialog.py" />
   <source>Letters are those of</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/intake_dialog.py" />
   <source>What {name} means</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/intake_text.py" />
   <source>At which place was this? Fill it in above.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/intake_text.py" />
   <source>Dates such as 3/4 can mean two days, and these rows do not tell which: choose above.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/intake_text.py" />
   <source>Some rows have a date without a time of day: give the usual one above.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/intake_text.py" />
   <source>{source}: {made_of}, {many} below the heading.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/intake_text.py" />
   <source>Take in {hauls}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/intake_text.py" />
   <source>{source}: {parts}. Undo in the Edit menu takes them out again.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/intake_text.py" />
   <source>{source}: nothing added; every haul in it is in the log already.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/intake_text.py" />
   <source>row</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/intake_text.py" />
   <source>rows</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/intake_text.py" />
   <source>line</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/intake_text.py" />
   <source>lines</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/intake_text.py" />
   <source>new haul</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/intake_text.py" />
   <source>new hauls</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/intake_text.py" />
   <source>{rows} filled that waited for the counts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/intake_text.py" />
   <source>{known} in the log already</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/intake_text.py" />
   <source>and {n_problems} more</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/intake_text.py" />
   <source>{hauls} added</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/intake_text.py" />
   <source>{rows} filled</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/intake_text.py" />
   <source>good haul</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/intake_text.py" />
   <source>good hauls</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/kitchen_ask.py" />
   <source>Save</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/kitchen_ask.py" />
   <source>Not counted</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/kitchen_ask.py" />
   <source>You can fill it in later, in Log hauls</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/kitchen_ask.py" />
   <source>Crabs picked</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/kitchen_ask.py" />
   <source>Light ones of those</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/kitchen_ask.py" />
   <source>How were the crabs of trip {name} in the kitchen? The count teaches the forecast; leave it out when nobody counted.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/kitchen_ask.py" />
   <source>⚠ Not saved. Light {what}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/kitchen_ask.py" />
   <source>⚠ Not saved. The count {what}; {remedy}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/kitchen_ask.py" />
   <source>kitchen count of trip {name}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/layout_desk.py" />
   <source>{trap} to {spot}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/layout_desk.py" />
   <source>Working out what this layout is worth…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/layout_desk.py" />
   <source>Trip {name} stands in the log with the traps as laid out. Correct what went otherwise; Undo in the Edit menu takes it out again.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/layout_desk.py" />
   <source>layout as proposed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/layout_desk.py" />
   <source>start of trip {name}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/layout_editor.py" />
   <source>Drag a trap to another spot, or choose it and press Alt with the up or down arrow. Ctrl+Z takes a move back.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/layout_editor.py" />
   <source>Which trap goes where on the next trip will stand here. Give the place its spots in the place book, and log traps with their design and spot.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/layout_editor.py" />
   <source>Spot above</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/layout_editor.py" />
   <source>Alt with the up arrow</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/layout_editor.py" />
   <source>Spot below</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/layout_editor.py" />
   <source>Alt with the down arrow</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/layout_editor.py" />
   <source>Redo move</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/layout_editor.py" />
   <source>As proposed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/layout_editor.py" />
   <source>Put every trap back where it was proposed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/layout_editor.py" />
   <source>Start this trip in the log</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/layout_editor.py" />
   <source>Rows with the traps at these spots, to fill in as you haul</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/layout_editor.py" />
   <source>Layout of the next trip</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/layout_editor.py" />
   <source>Spot and traps</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/layout_editor.py" />
   <source>no trap</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/like_it.py" />
   <source>No trips are logged here yet. Logged trips that had the same moon, season and water as the chosen day will be listed here, with how full the crabs were.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/like_it.py" />
   <source>No trip was logged here before that day.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/like_it.py" />
   <source>{light} of {judged} light: {share}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/like_it.py" />
   <source>Past trips like the chosen day</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/like_it.py" />
   <source>Past trips like {day}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/load_text.py" />
   <source>Set {set_at}, haul {haul_at} {zone}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/load_text.py" />
   <source>Leave with bait at {clock}. Soak {soak}, {count} full keepers, light crabs {light}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/load_text.py" />
   <source>at least {height} over the trap</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/load_text.py" />
   <source>the trap stands dry at the lowest water</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/load_text.py" />
   <source>{cover}; {line} of line</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/load_text.py" />
   <source>No spots are entered for this place.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/load_up.py" />
   <source>No plan is chosen. Choose dates first; what goes aboard for that trip will be here: traps and lines, bait, rules of the place, safety, and the trip sheet to print.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/load_up.py" />
   <source>Paper of the sheets</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/load_up.py" />
   <source>Print or save trip sheet…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/load_up.py" />
   <source>One page to take along, as a PDF</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/load_up.py" />
   <source>Calendar…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/load_up.py" />
   <source>Check, set and haul with alarms, for any calendar</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/load_up.py" />
   <source>Waypoints…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/load_up.py" />
   <source>The spots with their traps, for a plotter (GPX)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/load_up.py" />
   <source>Water table…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/load_up.py" />
   <source>The water at each spot every ten minutes (CSV)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/load_up.py" />
   <source>Another plan</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/load_up.py" />
   <source>Choose dates: pick another plan to load up for</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/load_up.py" />
   <source>Choose dates</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/load_up.py" />
   <source>Paper</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/load_up.py" />
   <source>Checklist</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/load_up.py" />
   <source>Packing the list</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/load_up.py" />
   <source>The plans are being worked out. What goes aboard for the chosen one will be here: traps and lines, bait, rules of the place, safety, and the trip sheet.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/load_up.py" />
   <source>Where the traps go, in the order of setting</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/load_up.py" />
   <source>Where the traps go</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/load_up.py" />
   <source>{ticked} of {whole} ticked off for this trip</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/load_up.py" />
   <source>Save the trip sheet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/load_up.py" />
   <source>Writing the trip sheet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/load_up.py" />
   <source>Writing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/load_up.py" />
   <source>Letter</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/load_up.py" />
   <source>Done</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/load_up.py" />
   <source>Trip sheet written to {path}. Print it from there.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/load_up.py" />
   <source>Save the calendar file</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/load_up.py" />
   <source>Calendar (*.ics)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/load_up.py" />
   <source>Save the waypoints</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/load_up.py" />
   <source>Waypoints (*.gpx)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/load_up.py" />
   <source>Save the water</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/load_up.py" />
   <source>Table (*.csv)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/load_up.py" />
   <source>Move traps…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/load_up.py" />
   <source>Put traps at other spots</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/load_up.py" />
   <source>Written to {path}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/log_files.py" />
   <source>Tables and logs (*.csv *.txt *.tsv *.xlsx *.logbook);;All files (*)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/log_files.py" />
   <source>Haul table (*.csv);;Workbook (*.xlsx);;Whole log to keep or carry (*.logbook)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/log_files.py" />
   <source>Import…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/log_files.py" />
   <source>A table (CSV or XLSX) of any make</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/log_files.py" />
   <source>Paste</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/log_files.py" />
   <source>Take in the text that the tally page gave</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/log_files.py" />
   <source>Export…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/log_files.py" />
   <source>CSV, XLSX, or all in one file</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/log_files.py" />
   <source>Reading the table</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/log_files.py" />
   <source>Export the log</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/log_files.py" />
   <source>Writing the log</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/log_files.py" />
   <source>{name} is a whole log and would take the place of this one. To have that: Backups of the log in the File menu, Another file. To add its hauls to these, export it as CSV where it is, and import that.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/log_files.py" />
   <source>pasted text</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/log_files.py" />
   <source>import of {source}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/log_files.py" />
   <source>The log is what {name} holds.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/log_files.py" />
   <source>{n_hauls} hauls written to {path}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/log_files.py" />
   <source>This log is read from a table: export it as CSV or XLSX.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/look_back.py" />
   <source>Kind of trap</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/look_back.py" />
   <source>Look back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/look_back.py" />
   <source>Group by</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/look_back.py" />
   <source>Light crabs of 100 judged</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/look_back.py" />
   <source>light, of 100 judged</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/look_back.py" />
   <source>What each group gave</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/look_back.py" />
   <source>Looking back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/look_back.py" />
   <source>look back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/look_back.py" />
   <source>look back groups</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/look_back.py" />
   <source>Month</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/look_back_text.py" />
   <source>{mean:.1f} ({low:.1f}-{high:.1f})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/look_back_text.py" />
   <source>{mean:.0%} ({low:.0%}-{high:.0%})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/look_back_text.py" />
   <source>{said}. Brackets hold 8 times in 10, as trips differ.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/look_back_text.py" />
   <source>{mean:.1f}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/look_back_text.py" />
   <source>No haul is like that. Take a filter away.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/look_back_text.py" />
   <source> Unlike hauls stand side by side here: whether one really is better, Weigh evidence tells.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/look_back_text.py" />
   <source> The table has the newest {most_rows}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/look_back_text.py" />
   <source>{keepers} keepers, {rate} a haul</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/look_back_text.py" />
   <source>none light</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/look_back_text.py" />
   <source>{one_in} light</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/look_back_text.py" />
   <source>{judged} judged, {light}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/menus.py" />
   <source>As the system</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/menus.py" />
   <source>Dark</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/menus.py" />
   <source>&amp;Open place file…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/menus.py" />
   <source>Show the &amp;demo place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/menus.py" />
   <source>&amp;Backups of the log…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/menus.py" />
   <source>Strip as &amp;table</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/menus.py" />
   <source>&amp;Help with this view</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/menus.py" />
   <source>&amp;Contents of the guide</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/menus.py" />
   <source>&amp;Questions and answers</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/menus.py" />
   <source>Check this &amp;installation…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/menus.py" />
   <source>&amp;About Fullshell</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/menus.py" />
   <source>Metres</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/menus.py" />
   <source>Feet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/menus.py" />
   <source>24-hour clock</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/menus.py" />
   <source>12-hour clock</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/menus.py" />
   <source>&amp;Help</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/new_place.py" />
   <source>A new place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/new_place.py" />
   <source>38.2, north positive</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/new_place.py" />
   <source>-76.1, east positive</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/new_place.py" />
   <source>Make the place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/new_place.py" />
   <source>Cancel</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/new_place.py" />
   <source>Writing the place file</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/new_place.py" />
   <source>&amp;Latitude, degrees</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/new_place.py" />
   <source>L&amp;ongitude, degrees</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/new_place.py" />
   <source>Time &amp;zone</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/new_place.py" />
   <source>A place file is written into your places, with remarks on what to fill in: the water from an agency's constants or by offsets from another place, your spots, the ramp, the rules. Then you fill in its water here.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/observed_panel.py" />
   <source>A table with the header time,height,kind</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/observed_panel.py" />
   <source>Observed high and low waters</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/observed_panel.py" />
   <source>Remove</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/observed_panel.py" />
   <source>Put back the water removed last</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/observed_panel.py" />
   <source>Load a CSV file…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/observed_panel.py" />
   <source>Differences from prediction</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/observed_panel.py" />
   <source>Times on the clock of {key}, such as 2026-07-04 06:12. Heights above {datum} in {unit}, as in the place file; leave them empty when you only saw the time.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/observed_panel.py" />
   <source>High or low water</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/observed_panel.py" />
   <source>Load observed waters</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/observed_panel.py" />
   <source>Tables (*.csv)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/observed_panel.py" />
   <source>Reading the waters</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/observed_panel.py" />
   <source>Comparing the waters</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/observed_panel.py" />
   <source>Seen</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/observed_panel.py" />
   <source>Water</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/observed_panel.py" />
   <source>Time off</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/observed_panel.py" />
   <source>Height off</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/observed_panel.py" />
   <source>What they say</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/observed_panel.py" />
   <source>Check against what you saw</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/observed_panel.py" />
   <source>Local time</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/observed_rows.py" />
   <source>{what}: on average {shown} {sides} than predicted</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/observed_rows.py" />
   <source>{text_}; one alone shows no scatter.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/observed_rows.py" />
   <source>Row {number},{rest}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/observed_rows.py" />
   <source>{matched} of {rows} observed waters found their predicted one.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/observed_rows.py" />
   <source>{text_}; single ones scatter about that by {shown}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/observed_rows.py" />
   <source>{value_m:.0f} cm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/observed_rows.py" />
   <source>{metres_to:.1f} ft</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/observed_rows.py" />
   <source>Enter a few high or low waters that you saw or read off a gauge. How far the prediction is off, and how steadily, will be said here.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/observed_rows.py" />
   <source>None of {rows} observed waters is within eight hours of a predicted one of its kind. Check dates and kinds.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/observed_rows.py" />
   <source>Times</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/observed_rows.py" />
   <source>{few_turns} or more are needed before anything is said about what may be wrong: wind alone moves single waters by decimetres and half an hour.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/observed_rows.py" />
   <source>{value:d} min</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/observed_rows.py" />
   <source>Heights</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/observed_rows.py" />
   <source>{metres_to:.2f}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/observed_rows.py" />
   <source>no match</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/observed_rows.py" />
   <source>{minutes:+.0f} min</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/offset_fits.py" />
   <source>{mean} min {side} (80%: {low:+d} to {high:+d} min)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/offset_fits.py" />
   <source>height plus {height} (80%: {low} to {high})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/offset_fits.py" />
   <source>{kind} water: {minutes}; {height} (from {count} seen).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/offset_fits.py" />
   <source>height times {mean:.2f} (80%: {low:.2f} to {high:.2f})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/offset_fits.py" />
   <source>High</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/offset_fits.py" />
   <source>Low</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/offsets_form.py" />
   <source>Later than there, minutes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/offsets_form.py" />
   <source>Height there times</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/offsets_form.py" />
   <source>then plus</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/offsets_form.py" />
   <source>Reference place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/offsets_form.py" />
   <source>One diff&amp;erence for every tide</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/offsets_form.py" />
   <source>By time of day and hei&amp;ght (interpolated)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/offsets_form.py" />
   <source>&amp;Reference place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/offsets_form.py" />
   <source>Waters seen</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/offsets_form.py" />
   <source>Fit offsets to these</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/offsets_form.py" />
   <source>Take these offsets</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/offsets_form.py" />
   <source>Leave them</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/offsets_form.py" />
   <source>Keep the offsets that are there</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/offsets_form.py" />
   <source>Three or more of each kind: times on the clock here, such as 2026-07-04 06:12, heights in {unit} above the datum of this place. They are kept for the check, too.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/offsets_form.py" />
   <source>Keeping the waters</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/offsets_form.py" />
   <source>Fitting the offsets</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/offsets_form.py" />
   <source>Height</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/offsets_form.py" />
   <source>high or low</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/offsets_form.py" />
   <source>Or fit them to waters you saw here</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/offsets_form.py" />
   <source>{kind} water</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/offsets_form.py" />
   <source>{kind} water: {words}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/offsets_form.py" />
   <source>Taken over. Nothing is saved yet.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/offsets_form.py" />
   <source>Choose the reference place first.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/paste_form.py" />
   <source>{constituents} understood. Columns of numbers: </source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/paste_form.py" />
   <source>Read so, the water would move through about {metres:.1f} m ({feet:.1f} ft) from low to high at large springs. If the water there does not, choose another unit.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/paste_form.py" />
   <source>Paste the table: names, amplitudes and phase lags, in whatever order they come.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/paste_form.py" />
   <source>No constants understood. A line needs a name, an amplitude and a phase lag.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/paste_form.py" />
   <source>{n_found} constituents taken over{changed}. Nothing is saved yet.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/paste_form.py" />
   <source>constituent</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/paste_form.py" />
   <source>constituents</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/paste_form.py" />
   <source>Table of constants from an agency's page</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/paste_form.py" />
   <source>Name   Amplitude   Phase
M2     3.49        10.8
K1     2.74        276.8</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/paste_form.py" />
   <source>choose: the page does not say</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/paste_form.py" />
   <source>Amplitudes on the &amp;page are in</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/paste_form.py" />
   <source>Phase &amp;lags are on the clock</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/paste_form.py" />
   <source>What was understood</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/paste_form.py" />
   <source>Take these constants</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/paste_form.py" />
   <source>Leave it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/paste_form.py" />
   <source>Keep the constants that are there</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/paste_form.py" />
   <source>Amplitude</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/paste_form.py" />
   <source>, amplitudes turned from {page} into {place}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/paste_form.py" />
   <source>Constituent</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/paste_form.py" />
   <source>Phase lag, °</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/paste_form.py" />
   <source>Paste constants from an agency's page</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/paste_form.py" />
   <source>Lags called G or Greenwich are on UTC; lags called local or kappa prime on the station's standard time. A wrong clock moves every tide by hours.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/paste_form.py" />
   <source>and {n_left_out} more lines</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/paste_form.py" />
   <source>⚠ Left out: {some}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/paste_form.py" />
   <source>Choose the unit of the amplitudes first: the page does not say it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/picture.py" />
   <source>{out}: the picture could not be written; name a .png file in a folder that exists and can be written to</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_charts.py" />
   <source>Water of the coming month</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_charts.py" />
   <source>water above {datum}, {length}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_charts.py" />
   <source>{turns} high and low waters in {days} days, from {lowest} to {highest}; the table lists them</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_charts.py" />
   <source>{day_clock} {zone}: about {height}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_charts.py" />
   <source>Spots against the year's water</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_charts.py" />
   <source>height above {datum}, {length}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_charts.py" />
   <source>The table tells each spot's depth and hours bare in a year</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_charts.py" />
   <source>ramp works above this</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_charts.py" />
   <source>bare {bare} a year</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_charts.py" />
   <source>highest water</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_charts.py" />
   <source>lowest water</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_editor.py" />
   <source>What to edit</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_editor.py" />
   <source>Spots and ramp</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_editor.py" />
   <source>Temperature</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_editor.py" />
   <source>Rules</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_editor.py" />
   <source>Free days</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_editor.py" />
   <source>Save the place (Ctrl+S)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_editor.py" />
   <source>Back to the place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_editor.py" />
   <source>What is not saved is kept as a draft</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_editor.py" />
   <source>Start from the saved file</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_editor.py" />
   <source>Reading the place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_editor.py" />
   <source>Working out the water</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_editor.py" />
   <source>Saving the place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_editor.py" />
   <source>Saved again: {name}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_editor.py" />
   <source>the edit</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_editor.py" />
   <source>An edit of this place was not saved. It is shown below as you left it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_editor.py" />
   <source>Put right what is marked first: nothing is saved while there are problems</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_editor.py" />
   <source>the edit of {name}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_list.py" />
   <source>A published station</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_list.py" />
   <source>Your place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_list.py" />
   <source>Search places</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_list.py" />
   <source>Places</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_list.py" />
   <source>Your places</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_list.py" />
   <source>none yet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_list.py" />
   <source>Samples</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_list.py" />
   <source>An invented sample</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_list.py" />
   <source>Your place, marked as invented</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_list.py" />
   <source>Elsewhere</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_panel.py" />
   <source>The coming {month_days} days on the clock of {zone}. Point at the curve to read it; drag along it, and zoom with Ctrl and the wheel.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_panel.py" />
   <source>What is known of the place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_panel.py" />
   <source>Facts and water of the place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_panel.py" />
   <source>Tidal constituents</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_panel.py" />
   <source>Rules and closures</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_panel.py" />
   <source>No spots entered in the place file yet. </source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_panel.py" />
   <source>Spots</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_panel.py" />
   <source>Constants</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_panel.py" />
   <source>High and low waters of the coming month</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_panel.py" />
   <source>Each box is a trap on its ground. The band is what the coming year's astronomical tide reaches; wind and pressure go beyond it. Drag the picture sideways when there are more.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_panel.py" />
   <source>The constants of the reference place, {name}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_panel.py" />
   <source>Amplitudes and phase lags as the place file gives them, largest first.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_sections.py" />
   <source>Trap height, {unit}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_sections.py" />
   <source>2026: when the agency issued them</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_sections.py" />
   <source>La&amp;titude, degrees</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_sections.py" />
   <source>&amp;Heights of this place in</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_sections.py" />
   <source>&amp;Datum (what zero means)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_sections.py" />
   <source>So&amp;urce of the water</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_sections.py" />
   <source>State of the &amp;constants</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_sections.py" />
   <source>empty: launching never waits for water</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_sections.py" />
   <source>&amp;Ramp works down to a water level of</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_sections.py" />
   <source>Charted depths in {unit} below the datum; a bank that dries has a negative one. Crab traps stand about 0.3 to 0.6 m (1 to 2 ft) high (common practice). Positions in degrees, north and east positive, are only for the waypoints; they may stay empty.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_sections.py" />
   <source>All heights of the place are in this one unit: mean level, amplitudes, depths, ramp. Changing it here changes what the numbers mean, not the numbers.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_sections.py" />
   <source>Water temperature in {name}, degrees Celsius</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_sections.py" />
   <source>Water temperature, °C</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/place_sections.py" />
   <source>Monthly means of the water in degrees Celsius: all twelve, or none. Without them the forecast goes by a typical year and is less sure.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places.py" />
   <source>New place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places.py" />
   <source>Write the file of a new place to fill in</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places.py" />
   <source>Open place file…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places.py" />
   <source>Open a place file from anywhere</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places.py" />
   <source>Show the folder</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places.py" />
   <source>Show your own place files</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places.py" />
   <source>Open this place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places.py" />
   <source>Show this place in every view</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places.py" />
   <source>Copy to my places</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places.py" />
   <source>Put a copy among your own places</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places.py" />
   <source>Edit</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places.py" />
   <source>Change name, water, spots and more here</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places.py" />
   <source>Edit the file</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places.py" />
   <source>Open the place file in your text editor</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places.py" />
   <source>Read again</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places.py" />
   <source>Read the place file anew</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places.py" />
   <source>Problems of the place file</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places.py" />
   <source>This place cannot be used yet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places.py" />
   <source>Reading the place book</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places.py" />
   <source>Working out the water there</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places.py" />
   <source>Copying the place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places.py" />
   <source>Open a place file</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places.py" />
   <source>Choose a place on the left to see its water, its spots and its rules.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places.py" />
   <source>Place book</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places.py" />
   <source>Where</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places.py" />
   <source>Found</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places.py" />
   <source>What is wrong</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places.py" />
   <source>What to do</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places.py" />
   <source>Every problem of the file is listed. Put them right, then read it again.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places.py" />
   <source>⚠ {problems} in {name}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places.py" />
   <source>Open in every view now</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places.py" />
   <source>This is your copy: change what you like. The sample stays as it was.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>mean of each day's lowest water</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>mean low water</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>lowest astronomical tide</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>mean sea level</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>mean high water</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>mean of each day's highest water</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>{latitude_deg:.3f}° {north}, {longitude_deg:.3f}° {east}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>{key} ({tzname} on {day}, {from_utc})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>{rule}. The rule “{other}” would change a level by at most {shown}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>{constituents}, phase lags on {reference}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>{name}, by its time of day and height: high water {high}, low water {low}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>not given</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>{minutes} min earlier</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>{bare}; ground dry {dry}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>The ramp works down to {height}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>{where}: too low for about {hours} of the coming year.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>yearly: held at their mid-year values, as agency tables do</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>continuous: worked out anew for every instant</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>continuous</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>yearly</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>{apart:.0f} cm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>{apart:.1f} ft</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>{moved}. Only high and low waters are known; the curve between them is drawn</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>{name}: high water {high}, low water {low}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>{constants_state}. Agencies renew constants: compare now and then</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>at the same time</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>{minutes} min later</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>Amplitude, {unit}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>Period</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>{hours:.2f} h</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>{hours:.1f} days</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>Over the trap at lowest</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>Bare in a year</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>never</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>{value:,.0f} h</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>No ramp level entered: launching never waits for water in the plans.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>{where}: always, in the coming year's astronomical tide.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>on {first}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>from {first} to {last}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source> every year</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>on {days} {span}{every}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>Position</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>Clock</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>Heights count from</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>Water comes from</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>Source</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>State of the constants</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>Node factors</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>Tide</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>{tide_type} (form number {form_number:.2f})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>Range</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>{mean} on average, springs {springs}, neaps {neaps}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>Highest and lowest</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>{highest} and {lowest} in the 19 years from {first_year}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>{metres_to:.3f}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>{phase_lag_deg:.1f}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>No date entered for when you checked the rules here.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>Rules last checked {day} {year}, {ago}{where}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>A soak of at most {max_soak_h:g} h.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>Closed {closure}: {reason}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>on {days}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>the water never turns here</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/places_text.py" />
   <source>{hours:.2g}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/plan_panel.py" />
   <source>Why this plan, and what to mind</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/plan_panel.py" />
   <source>Load up for this plan</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/plan_panel.py" />
   <source>Open the checklist and the trip sheet for the chosen plan</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/plan_panel.py" />
   <source>Log this trip</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/plan_panel.py" />
   <source>Open the trip's rows in Log hauls, with the plan's times and traps</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/plan_panel.py" />
   <source>See this plan and another side by side  (Alt+P)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/plan_panel.py" />
   <source> (any time to {clock})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/plan_panel.py" />
   <source>Set {begin}, haul {day_clock} {zone}; soak {soak}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/plan_panel.py" />
   <source>Pick a plan to see its water, its light and its reasons.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/plan_words.py" />
   <source>its set</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/plan_words.py" />
   <source>its haul</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/plan_words.py" />
   <source>set and haul together</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/plan_words.py" />
   <source>Moving {held}: ← → by a quarter hour, with Shift by a day; Enter keeps it, Escape takes it back.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/plan_words.py" />
   <source>Move a plan: drag it or one of its ends on the strip, or press S (set), H (haul) or M (both) there and then ← →.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/plan_words.py" />
   <source>Your own: set {set_at}, haul {haul_at}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/plan_words.py" />
   <source>{count} full keepers</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/plan_words.py" />
   <source>light crabs {light}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/plan_words.py" />
   <source>No plan ranks above this one; the range of its keepers says how sure that is.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/plan_words.py" />
   <source>least cover {height}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/plan_words.py" />
   <source>No set and no haul: {reasons}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/plan_words.py" />
   <source> Not free: {reason}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/plan_words.py" />
   <source>{fewer} fewer than plan 1</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/plan_words.py" />
   <source>as many as plan 1</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/plans_panel.py" />
   <source>{count:,}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/plans_panel.py" />
   <source>Rank by expected full keepers; ↑ and ↓: places gained and lost by the last wish</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/plans_panel.py" />
   <source>When the first trap goes in</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/plans_panel.py" />
   <source>When hauling begins</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/plans_panel.py" />
   <source>Expected, with the range that holds 8 times in 10</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/plans_panel.py" />
   <source>Share of crabs that will be light</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/plans_panel.py" />
   <source>Cover</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/plans_panel.py" />
   <source>Least water over the top of any trap</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/plans_panel.py" />
   <source>Haul on water that is</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/plans_panel.py" />
   <source>and haul</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/plans_panel.py" />
   <source>{count:.1f} million</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/plans_panel.py" />
   <source>Ranked plans, the next 12 weeks</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/plans_panel.py" />
   <source>Ranked plans</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/plans_panel.py" />
   <source>Left out, in pairs of quarter hours: {left}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/plans_panel.py" />
   <source>Nothing keeps every limit. {words} Limits are set in the place file.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/plans_panel.py" />
   <source>any time</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/plans_panel.py" />
   <source>{mean:.0f} ({low:.0f}-{high:.0f})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/plans_panel.py" />
   <source>Decides between plans that promise the same catch</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/plans_panel.py" />
   <source>No plans are worked out yet.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/plans_panel.py" />
   <source>fewer than 1 in</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/record_form.py" />
   <source>{n_constants} constituents and the mean level taken over from {name}; their lags are on UTC. The datum is now the zero of that record. Nothing is saved yet.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/record_form.py" />
   <source>Heights in the &amp;file are in</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/record_form.py" />
   <source>Times &amp;without an offset are on</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/record_form.py" />
   <source>Choose the file…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/record_form.py" />
   <source>A table of observed levels, CSV</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/record_form.py" />
   <source>Constants found in the record</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/record_form.py" />
   <source>Observed levels</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/record_form.py" />
   <source>Tables (*.csv *.txt)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/record_form.py" />
   <source>Give the latitude of the place first, on the tab Place: the fit needs it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/record_form.py" />
   <source>Fitting the tide in the record</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/record_form.py" />
   <source>Use</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/record_form.py" />
   <source>Fit constants to a gauge's record</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/record_form.py" />
   <source>A CSV file with the header time,height: levels every hour or every six minutes, 15 days at least, best a whole year. Gaps may stay empty.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/record_form.py" />
   <source>the clock of {zone}, with its summer time</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/record_form.py" />
   <source>and {n_lines} more lines like these</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/record_form.py" />
   <source>Fitting the tide in {name}…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/record_panel.py" />
   <source>Forecast against outcome</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/record_panel.py" />
   <source>light crabs of 100, as forecast</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/record_panel.py" />
   <source>as they came</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/record_panel.py" />
   <source>{n_trips} past trips{words}; the tables list them</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/record_panel.py" />
   <source>Scores of the forecasts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/record_panel.py" />
   <source>Trips of like forecasts together</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/record_panel.py" />
   <source>Both scores are means over judged crabs; smaller is better. Each past trip was forecast from earlier trips only.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/record_panel.py" />
   <source>Past forecasts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/record_panel.py" />
   <source>On the dashed line forecast and outcome are equal. Discs: trips, larger with more crabs judged, and the forecast's 80% interval. Squares: trips of like forecasts together, and the 80% interval of what came; forecasts can be relied on where those reach the dashed line.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/record_panel.py" />
   <source>, in {groups} groups</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/row_chart.py" />
   <source>{name}: {mean:.2g}, 80% interval {low:.2g} to {high:.2g}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/row_chart.py" />
   <source>{name}: nothing known</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/row_chart.py" />
   <source>{n_beyond} more, to {beyond:g} →</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/rows_editor.py" />
   <source>Take out</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/rows_editor.py" />
   <source>Take the chosen {one} out</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/rows_editor.py" />
   <source>Put back the {one} taken out last</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/rules_section.py" />
   <source>the agency's leaflet, its page, its office</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/rules_section.py" />
   <source>empty: no limit entered</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/rules_section.py" />
   <source>Checked today</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/rules_section.py" />
   <source>You have read the rules today</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/rules_section.py" />
   <source>Closed periods</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/rules_section.py" />
   <source>closed period</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/rules_section.py" />
   <source>Rules chec&amp;ked on</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/rules_section.py" />
   <source>Rules checked on</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/rules_section.py" />
   <source>W&amp;here they were checked</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/rules_section.py" />
   <source>&amp;Most traps allowed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/rules_section.py" />
   <source>Longest soak allowed, &amp;hours</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/rules_section.py" />
   <source>Enter when you checked the rules, so that you are told when that is too old.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/rules_section.py" />
   <source>Checked {months} months ago, longer than a season: check with the agency.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/rules_section.py" />
   <source>From</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/rules_section.py" />
   <source>To</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/rules_section.py" />
   <source>Only on</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/rules_section.py" />
   <source>Heading</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/rules_section.py" />
   <source>What the rule says</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/rules_section.py" />
   <source>No trap in the water</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/rules_section.py" />
   <source>From and to as dates, 2026-07-04 for once or 07-04 for every year (over New Year if need be); days of the week such as Sun, Wed, alone or within the period.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/rules_section.py" />
   <source>Every other rule</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/rules_section.py" />
   <source>Agencies regulate what these headings name; the program knows no rule itself. What you write becomes your checklist; a heading without words is left out.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/settings.py" />
   <source>The file of your settings is damaged, so Fullshell starts with its own settings. </source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/settings.py" />
   <source>{said}Choose colours and units anew in the View menu; your places and log are safe.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/settings.py" />
   <source>Of your settings {names} could not be used and went back to what Fullshell begins with. Choose anew in the View menu where you want it otherwise.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/settings.py" />
   <source>The damaged file was set aside as {name}. </source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/settings.py" />
   <source>Your settings could not be read ({strerror}), so Fullshell starts with its own. Allow reading of {path}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/settings.py" />
   <source>{said}Delete {path} when this comes again.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/soak_chart.py" />
   <source>{turn} {height} at {clock}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/soak_chart.py" />
   <source>No turn of the tide in the soak</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/soak_chart.py" />
   <source>Water through the soak</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/soak_chart.py" />
   <source>least cover</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/soak_chart.py" />
   <source>During the soak: </source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/soak_chart.py" />
   <source>- - ramp limit</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/soak_chart.py" />
   <source>high water</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/soak_chart.py" />
   <source>low water</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/sources.py" />
   <source>Places ({listed})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/status_line.py" />
   <source>Working</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/status_line.py" />
   <source>Stop</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/status_line.py" />
   <source>Give up what is being worked out</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/strip/calendar_lanes.py" />
   <source>{day:%a} {day.day}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/strip/calendar_lanes.py" />
   <source>{begin:%B} {begin.year}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/strip/calendar_lanes.py" />
   <source>{begin:%b} {begin.year}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/strip/calendar_lanes.py" />
   <source>{begin:%b}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/strip/days.py" />
   <source>moon {way}, {lit:.0%} lit</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/strip/days.py" />
   <source>Against the year's average ({yearly}), in light crabs of 100: {parts}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/strip/days.py" />
   <source>{phase_names} moon</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/strip/days.py" />
   <source>{day} {year}: {mean:.0%} full ({low:.0%} to {high:.0%}), light crabs {light}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/strip/days.py" />
   <source>water {lowest} to {highest}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/strip/days.py" />
   <source>Logged {trip}: {outcome}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/strip/days.py" />
   <source>No difference from the year's average.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/strip/days.py" />
   <source>{keepers} keepers from {hauls} hauls</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/strip/days.py" />
   <source>{light} of {judged} judged were light</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/strip/days.py" />
   <source>fullness not judged</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/strip/days.py" />
   <source>{day} {year}: not worked out yet.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/strip/days.py" />
   <source>sun {rise} to {sets}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/strip/days.py" />
   <source>{plan_name}: set {set_at}, haul {haul_at}, {count} full keepers.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/strip/days.py" />
   <source>Not free: {why_not_free}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/strip/days.py" />
   <source>{label} {points:+.1f}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/strip/days.py" />
   <source>season and water</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/strip/days.py" />
   <source>recent trips</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/strip/legend.py" />
   <source>Legend: pale is light, middle is filling, deep blue is full; hatched is unsure; logged trips are open circles when light, half filled when mixed, filled when full; small ones at the chosen day are past trips like it; free days are underlined, closed days crossed; the dashed line is the ramp's limit</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/strip/legend.py" />
   <source>Fullness: light </source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/strip/legend.py" />
   <source> logged full</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/strip/legend.py" />
   <source> light (1 in 4 up)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/strip/legend.py" />
   <source> trips like this day</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/strip/legend.py" />
   <source> free day</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/strip/legend.py" />
   <source> ramp limit</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/strip/table.py" />
   <source>Day</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/strip/table.py" />
   <source>Logged</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/strip/table.py" />
   <source>Plans</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/strip/table.py" />
   <source>Free or closed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/strip/table.py" />
   <source>Days as a table</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/strip/view.py" />
   <source>low to high</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/strip/view.py" />
   <source>expected, 0 to 100</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/strip/view.py" />
   <source>Full crabs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/strip/view.py" />
   <source>forecast and logged</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/strip/view.py" />
   <source>set to haul</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/strip/view.py" />
   <source>Days: fullness, water, trips and plans</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/tabled_form.py" />
   <source>time</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/tabled_form.py" />
   <source>Time: by the clock time of high or low water at the reference place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/tabled_form.py" />
   <source>height</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/tabled_form.py" />
   <source>Height: by the height of that water there, at springs and at neaps</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/tabled_form.py" />
   <source>Clock of the table</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/tabled_form.py" />
   <source>Differences</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/tabled_form.py" />
   <source>there at</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/tabled_form.py" />
   <source>minutes later</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/tabled_form.py" />
   <source>height there</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/tabled_form.py" />
   <source>plus</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/tabled_form.py" />
   <source>UTC, or such as UTC+01:00</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/tabled_form.py" />
   <source>Clock of the &amp;table, never summer time</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/tabled_form.py" />
   <source>Each time holds twelve hours later too. Between the two columns a difference goes in a straight line. Earlier and lower are written with a minus.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/tabled_form.py" />
   <source>{water}, column {column}: {head}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/tabled_form.py" />
   <source>{water}, {one} in column {column}, {head}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/tables.py" />
   <source>{accessiblename} as a table</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trap_rows.py" />
   <source>{keepers} keepers, {each:.1f} a haul</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trap_rows.py" />
   <source>{judged} judged, light {light_words}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trap_rows.py" />
   <source>{day} {on:%b %Y}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/traps_window.py" />
   <source>Traps by label</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/traps_window.py" />
   <source>Label of a new trap</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/traps_window.py" />
   <source>History of the trap</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/traps_window.py" />
   <source>What befell it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/traps_window.py" />
   <source>On which day</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/traps_window.py" />
   <source>what was done, what it cost</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/traps_window.py" />
   <source>Notes to it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/traps_window.py" />
   <source>Add to history</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/traps_window.py" />
   <source>Take the chosen line out</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/traps_window.py" />
   <source>Hauls of the trap, newest first</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/traps_window.py" />
   <source>Trap {label}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/traps_window.py" />
   <source>history of trap</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/traps_window.py" />
   <source>History</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/traps_window.py" />
   <source>No trap yet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/traps_window.py" />
   <source>Traps appear here with their first haul, or when you name one.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/traps_window.py" />
   <source>description of trap</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trial_panel.py" />
   <source>What differs somewhere in the log. Entrances and colour are read from the trap's design, such as "red wire, 4 doors", or from a column of that name in an imported table</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trial_panel.py" />
   <source>No two kinds of anything are logged yet: give your traps a design, a bait or a spot.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trial_panel.py" />
   <source>Picture (*.png)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trial_panel.py" />
   <source>traps by {by}.csv</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trial_panel.py" />
   <source>This place only</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trial_panel.py" />
   <source>The comparison as a table (CSV) or as a picture (PNG)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trial_panel.py" />
   <source>Rates of each group</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trial_panel.py" />
   <source>Next trip: which trap goes where</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trial_panel.py" />
   <source>Comparing traps</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trial_panel.py" />
   <source>Comparing…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trial_panel.py" />
   <source>Export the comparison</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trial_panel.py" />
   <source>Writing the comparison</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trial_panel.py" />
   <source>Compare &amp;by</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trial_panel.py" />
   <source>&amp;Worth knowing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trial_panel.py" />
   <source>What would settle it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trial_panel.py" />
   <source>Picture of the comparison written to {out}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trial_panel.py" />
   <source>{out} cannot be written; choose another folder.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trial_panel.py" />
   <source>Comparison written to {out}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trial_rows.py" />
   <source>trap design</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trial_rows.py" />
   <source>number of entrances</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trial_rows.py" />
   <source>single traps</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trial_rows.py" />
   <source>length of soak</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trial_rows.py" />
   <source>all crabs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trial_rows.py" />
   <source>shorts (fewest is best)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trial_rows.py" />
   <source>females (fewest is best)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trial_rows.py" />
   <source>bycatch (fewest is best)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trial_rows.py" />
   <source>share of light crabs (fewest is best)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trial_rows.py" />
   <source>other animals a haul</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trial_rows.py" />
   <source>light crabs of 100 judged</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trial_rows.py" />
   <source>Total</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trial_rows.py" />
   <source>Best one</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trial_rows.py" />
   <source>Dot: what a haul gives, brought to the same trips, spots and a soak{soak}; the fewer hauls, the more it leans on the other groups. Bar: its 80% interval. Faint rings: {rings}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trial_rows.py" />
   <source>some of the hauls as counted, evenly chosen</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trial_rows.py" />
   <source>single hauls as counted</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trial_rows.py" />
   <source> of {common_soak_h:.0f} h</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trial_rows.py" />
   <source>{rate:.1f}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trial_rows.py" />
   <source>{low:.1f} to {high:.1f}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trial_rows.py" />
   <source>almost surely</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trial_rows.py" />
   <source>{common_soak_h:.4g}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trial_rows.py" />
   <source>not counted</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trial_rows.py" />
   <source>{p} in 10</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trial_rows.py" />
   <source>{value:.4g}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trip_chart.py" />
   <source>{n_trips} judged trips; the table lists them</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trip_details.py" />
   <source>kitchen count</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trip_details.py" />
   <source>Light ones of those picked in the kitchen</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trip_details.py" />
   <source>Crabs of the whole catch that were picked or cracked open</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trip_details.py" />
   <source>How many of the picked were light</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trip_details.py" />
   <source>in your words</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trip_details.py" />
   <source>is no number of people</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trip_details.py" />
   <source>write digits such as 2, or leave it empty</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trip_details.py" />
   <source>{number:.3f}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trip_details.py" />
   <source>Crew</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trip_details.py" />
   <source>Kitchen: picked</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trip_details.py" />
   <source>Not saved. The entry {what}; {remedy}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trip_details.py" />
   <source>write degrees, such as 75</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trip_entry.py" />
   <source>A row after this one (Ctrl+Return)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trip_entry.py" />
   <source>Remove trap</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trip_entry.py" />
   <source>Into the bin, with its counts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trip_entry.py" />
   <source>Single crabs…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trip_entry.py" />
   <source>Crabs of this trap looked at one by one (Ctrl+K)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trip_entry.py" />
   <source>Save what is kept here</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trip_entry.py" />
   <source>{trip}, {place} (times of {zone})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trip_entry.py" />
   <source>Not in the log yet. {why} What you typed stays here and is tried again.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trip_entry.py" />
   <source>{what} of trip {name}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trip_entry.py" />
   <source>new trap in trip {name}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trip_entry.py" />
   <source>The trip</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trip_entry.py" />
   <source>removal of a trap from trip {name}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trip_entry.py" />
   <source>{what} of trap {trap}, {name}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trip_entry.py" />
   <source>Not saved. {why}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trip_list.py" />
   <source>Kept</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trip_list.py" />
   <source>Find: trip, month, year or place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trip_list.py" />
   <source>Find trips by name or place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trip_list.py" />
   <source>Logged trips, newest first</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trip_list.py" />
   <source>No trip fits.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trip_points.py" />
   <source>new moon</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trip_points.py" />
   <source>first quarter</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trip_points.py" />
   <source>full moon</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trip_points.py" />
   <source>last quarter</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trip_points.py" />
   <source>{name}, {moon_words}: {light} of {judged} light, {share}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trip_points.py" />
   <source>{mean} of {judged}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trips_panel.py" />
   <source>Filled marks: full trips. Open: light ones. Half filled: mixed. Larger: more crabs judged. Lines: 80% interval of the trip's own count.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trips_panel.py" />
   <source>Band: 80% interval of what the model makes of the log, all else as on average.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trips_panel.py" />
   <source>Share (80% interval)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trips_panel.py" />
   <source>Kind</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trips_panel.py" />
   <source>{judged} trips with judged crabs; {unjudged} without, which say nothing of fullness.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trips_panel.py" />
   <source>{judged} trips with judged crabs.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trips_panel.py" />
   <source>Trips over the moon</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trips_panel.py" />
   <source>Trips over the year</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trips_panel.py" />
   <source>Placing the trips</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trips_panel.py" />
   <source>Over the moon</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trips_panel.py" />
   <source>Over the year</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/trips_panel.py" />
   <source>Judged trips, {heading}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/water_section.py" />
   <source>held at mid-year, as agency tables do</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/water_section.py" />
   <source>worked out for every instant</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/water_section.py" />
   <source>paste or add constants, or choose offsets from another place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/water_section.py" />
   <source>&amp;Constants of a station here</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/water_section.py" />
   <source>O&amp;ffsets from another place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/water_section.py" />
   <source>0.26: mean sea level above the datum</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/water_section.py" />
   <source>&amp;Mean level</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/water_section.py" />
   <source>Node &amp;factors</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/water_section.py" />
   <source>Constituents</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/water_section.py" />
   <source>Paste from an agency's page…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/water_section.py" />
   <source>Put a whole table of constants in at once</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/water_section.py" />
   <source>Fit to a gauge's record…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/water_section.py" />
   <source>Work constants out from hourly or six-minute levels in a CSV file</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/water_section.py" />
   <source>in {unit}: mean sea level above the datum</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/water_section.py" />
   <source>UTC (Greenwich)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/water_section.py" />
   <source>fill in both columns</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/water_section.py" />
   <source>No constants yet. Copy the table of harmonic constituents from the agency's page of the nearest station and paste it here.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/window.py" />
   <source>When should I set and pull?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/window.py" />
   <source>Load up</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/window.py" />
   <source>What goes aboard, and what are the rules here?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/window.py" />
   <source>What did each trap give?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/window.py" />
   <source>What do I know, and how sure?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/window.py" />
   <source>Is the water right here?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/window.py" />
   <source>The place that every view shows</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/window.py" />
   <source>This place, its water and its log are invented, to show what Fullshell does.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/window.py" />
   <source>Put the demo away</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/window.py" />
   <source>Close the invented place and its log and start with your own</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/window.py" />
   <source>Close the message</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/window.py" />
   <source>About Fullshell</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/window.py" />
   <source>Fullshell {version__}

Plans crab trapping trips around water, light and how full the crabs should be.

{tide_caution}
Rules differ by place and change: check them with the agency. Wear a life jacket, check the weather, and leave a float plan ashore.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/window.py" />
   <source>Stopped. Pick the place again to work it out.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/window.py" />
   <source>No place of your own yet: make one here, or open a published one. The demo goes as soon as another place is open, and comes back only when you ask for it in the File menu.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/workbench.py" />
   <source>Working out the water, the moon and the crabs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/workbench.py" />
   <source>Looking for set and haul times</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/workbench.py" />
   <source>Ranking the plans</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/workbench.py" />
   <source>Saving</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/workbench.py" />
   <source>Opening the log</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="planner/ui/workbench.py" />
   <source>This log is open for reading only; open the place itself.</source>
   <translation type="unfinished" />
  </message>
 </context>
</TS>
