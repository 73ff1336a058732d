### What a language says of itself. `language-direction` is `ltr` or `rtl`; `language-read` is `source` for the language the texts
### are written in first, `yes` where a native speaker who knows the trade has read them, else `awaited`.

# What the language calls itself.
language-name = Español
language-direction = ltr
language-read = awaited
## The sign before a number below zero.
number-minus = -
## What an iPhone says when a camera button is tapped for the first time.
language-camera-use = Steady abre la cámara cuando toca un botón de cámara, para que una foto acompañe lo que ha comprobado.
## Under the choice of a language that awaits its reader.
ui-language-awaits = Estos textos aún esperan la lectura de un hablante nativo que conozca el oficio. Si una frase suena rara, compárela con la inglesa.
