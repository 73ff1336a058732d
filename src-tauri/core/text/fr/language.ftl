### What a language says of itself. `language-direction` is `ltr` or `rtl`; `language-read` is `source` for the language the texts
### are written in first, `yes` where a native speaker who knows the trade has read them, else `awaited`.

# What the language calls itself.
language-name = Français
language-direction = ltr
language-read = awaited
## The sign before a number below zero.
number-minus = -
## What an iPhone says when a camera button is tapped for the first time.
language-camera-use = Steady ouvre l’appareil photo quand vous touchez un bouton d’appareil photo, pour qu’une photo accompagne ce que vous avez contrôlé.
## Under the choice of a language that awaits its reader.
ui-language-awaits = Ces textes attendent encore la lecture d’une personne du métier dont c’est la langue. Si une phrase semble étrange, comparez-la avec l’anglais.
