# Eine Bohrung eingeben: Tasten, Skizze, Eingefügtes

ui-pad-at = Tiefe { $depth } mm, { $angle }°
ui-pad-sign = Vorzeichen wechseln
ui-pad-begins = Mit { $begins } beginnen
ui-pad-next = Weiter
ui-pad-repeat = Wie zuvor
ui-pad-done = Alle Messwerte sind eingegeben.
ui-sketch = Skizze von { $count } Messwerten, wie sie eingegeben werden
ui-sketch-about = Skizze des Eingegebenen, Unterschiede vergrößert. Das Ergebnis kommt, wenn die Bohrung aufgenommen ist.
ui-paste = Einfügen oder Liste eines Messgeräts
ui-paste-field = Aus einer Tabelle oder der Datei eines Messgeräts
ui-paste-none = Das passt nicht in { $depths } Tiefen mit { $angles } Winkeln. Stellen Sie zuerst Tiefen und Winkel ein, oder fügen Sie eine Spalte oder Zeile ein, die ab der jetzigen Stelle Platz hat.
ui-paste-ways = Das lässt sich auf mehr als eine Weise lesen. Wählen Sie die richtige; vorher wird nichts eingetragen.
ui-paste-column = Spalte { $number }, { $count } Messwerte: { $first } …
ui-paste-row = { $count } Messwerte: { $first } …
ui-paste-lines-are-depths = Jede Zeile eine Tiefe: { $first } …
ui-paste-columns-are-depths = Jede Spalte eine Tiefe: { $first } …
