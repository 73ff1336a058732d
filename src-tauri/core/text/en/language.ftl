### What a language says of itself. `language-direction` is `ltr` or `rtl`; `language-read` is `source` for the language the texts
### are written in first, `yes` where a native speaker who knows the trade has read them, else `awaited`.

# What the language calls itself.
language-name = English
language-direction = ltr
language-read = source
## The sign before a number below zero.
number-minus = -
## What an iPhone says when a camera button is tapped for the first time.
language-camera-use = Steady opens the camera when you tap a camera button, so that a photo goes with what you checked.
## Under the choice of a language that awaits its reader.
ui-language-awaits = These texts await a native reader who knows the trade. Where a sentence reads oddly, compare it with English.
