### The workshop's own particulars, its units, and what they put on the papers.

length-um = { $um } µm
length-thou = { $thou } thou
length-inch = { $inch } in
readings-joint = { "; " }
odometer-converted = { $converted } (read as { $read })

letterhead-phone = Phone { $phone }
note-ask-named = Ask { $workshop }.
note-ask-named-technician = Ask { $workshop }. Name on the check: { $technician }.
note-ask-phone = Phone: { $phone }.
note-receipt-from = Note from: { $workshop }

## The owner's decision where there is nothing to repair. The three are recorded alike under every rating.
decision-repair-notice = I want it looked at again
decision-decide-later-notice = I will think about it
decision-decline-notice = I want nothing more done
decision-repair-unrated = Please finish the check
decision-decide-later-unrated = I will think about it
decision-decline-unrated = I do not want it checked
decision-short-repair = go ahead
decision-short-decide-later = thinking about it
decision-short-decline = left as it is

## The finding.
finding-heading-scope = Scope of work on the bearing
finding-heading-gauges = Gauge readings
finding-not-checked = Not checked: { $steps }.
detail-gauge = Read with a gauge: see the table of readings.
gauge-column-place = Where
gauge-column-readings = Readings
gauge-column-mean = Mean at the bearing
gauge-column-expanded = Expanded uncertainty, 95%
gauge-column-limit = Limit
gauge-column-decision = Decision
gauge-plus-minus = ± { $expanded }
gauge-expanded-none = not known from one reading
gauge-limit-unknown = none known

scope-before-teardown = The bench decides after teardown which of these it comes to. Until the bearing is out and its seat is measured, nobody can say.
scope-bench = The bench says: { $verdict }
scope-bearings-only = Bearings only
scope-bearings-only-about = New bearings in the seat as it is, if it is round, tight and sound.
scope-skim-and-sleeve = Seat restored and sleeved
scope-skim-and-sleeve-about = The worn seat is bored out and a sleeve is pressed in, if enough wall is left.
scope-replace-housing = Housing replaced
scope-replace-housing-about = A new housing and new bearings, if it is cracked or too little wall is left.
scope-chosen = The bench came to this
scope-ruled-out = Ruled out
scope-open = Open
scope-hours = { $from } to { $to } h
scope-hours-exact = { $hours } h
scope-hours-are = The hours are what this workshop usually needs; a car can need more or less.
scope-rate = Rate: { $rate } an hour, as the workshop entered it.
scope-no-quote = This is a scope of work, never a quote.

paper-label-unprintable = "[…]" stands for letters that this paper has no font for. The visit's record keeps them as they were typed.

## The screen.
ui-workshop = The workshop
ui-workshop-about = What you enter stands on every paper from now on. What stays empty is left out.
ui-workshop-name = Name
ui-workshop-address = Address, line by line
ui-workshop-phone = Phone
ui-workshop-length = Lengths
ui-workshop-length-none = As the language has it
ui-workshop-length-mm = Millimetres
ui-workshop-length-thou = Thousandths of an inch
ui-workshop-distance = Distances
ui-workshop-distance-none = As they were read
ui-workshop-distance-km = Kilometres
ui-workshop-distance-miles = Miles
ui-workshop-work = Work on the bearing
ui-workshop-work-about = Hours that each job usually takes you. A finding shows them as a scope of work, never as a quote.
ui-workshop-from = Hours from
ui-workshop-to = Hours to
ui-workshop-rate = Rate an hour
ui-workshop-currency = Currency
ui-workshop-saved = Saved. Every paper from now on carries it.
ui-workshop-draft = Not saved yet. What you wrote is kept here until you save or discard it.
ui-handover-papers = Papers too, for a reader without Steady
ui-handover-papers-language = Language of the papers
ui-handover-as-made = As last made

error-workshop-too-long = The workshop's particulars do not fit a paper
error-workshop-too-long-help = Name and address hold 100 characters a line, four lines at most; the phone holds 60, the currency 12. Shorten what is longer. Nothing was changed.
error-workshop-number = Hours or rate cannot be read
error-workshop-number-help = Write 2.5 or 2,5, and thousands without a sign, such as 1250. Hours go from the smaller to the larger, up to 200. Nothing was changed.
error-workshop-unreadable = The workshop file cannot be read
error-workshop-unreadable-help = Check that it is whole and has the form of the file in demo-data/workshop. Nothing was changed.
