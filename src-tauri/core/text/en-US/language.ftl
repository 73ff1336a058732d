### American English: what differs from English. `differs.ftl` is made, see `words.toml`.

language-name = English (US)
language-read = awaited
