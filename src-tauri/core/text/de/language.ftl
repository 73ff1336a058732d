### What a language says of itself. `language-direction` is `ltr` or `rtl`; `language-read` is `source` for the language the texts
### are written in first, `yes` where a native speaker who knows the trade has read them, else `awaited`.

# What the language calls itself.
language-name = Deutsch
language-direction = ltr
language-read = awaited
## The sign before a number below zero.
number-minus = -
## What an iPhone says when a camera button is tapped for the first time.
language-camera-use = Steady öffnet die Kamera, wenn Sie eine Kamerataste antippen, damit ein Foto zu dem gehört, was Sie geprüft haben.
## Under the choice of a language that awaits its reader.
ui-language-awaits = Diese Texte hat noch niemand geprüft, dessen Muttersprache es ist und der das Fach kennt. Liest sich ein Satz seltsam, vergleichen Sie ihn mit dem englischen.
