# Entering a bore: the pad, the sketch, what is pasted

ui-pad-at = Depth { $depth } mm, { $angle }°
ui-pad-sign = Change the sign
ui-pad-begins = Begin with { $begins }
ui-pad-next = Next
ui-pad-repeat = As before
ui-pad-done = Every reading is in.
ui-sketch = Sketch of { $count } readings as they are typed
ui-sketch-about = A sketch of what is typed, differences drawn larger. The result comes once the bore is recorded.
ui-paste = Paste, or a gauge's list
ui-paste-field = From a spreadsheet or a gauge's file
ui-paste-none = This cannot be put into { $depths } depths of { $angles } angles. Set depths and angles first, or paste one column or line of readings that fits behind the place of the pad.
ui-paste-ways = This can be read in more than one way. Choose the one that is right; nothing is entered before.
ui-paste-column = Column { $number }, { $count } readings: { $first } …
ui-paste-row = { $count } readings: { $first } …
ui-paste-lines-are-depths = Each line one depth: { $first } …
ui-paste-columns-are-depths = Each column one depth: { $first } …
