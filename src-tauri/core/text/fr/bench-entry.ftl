# Saisir un alésage : le clavier, l’esquisse, ce qui est collé

ui-pad-at = Profondeur { $depth } mm, { $angle }°
ui-pad-sign = Changer le signe
ui-pad-begins = Commencer par { $begins }
ui-pad-next = Suivant
ui-pad-repeat = Comme avant
ui-pad-done = Toutes les lectures sont saisies.
ui-sketch = Esquisse de { $count } lectures telles qu’elles sont saisies
ui-sketch-about = Esquisse de la saisie, écarts agrandis. Le résultat vient quand l’alésage est enregistré.
ui-paste = Coller, ou la liste d’un appareil
ui-paste-field = D’un tableur ou du fichier d’un appareil
ui-paste-none = Cela n’entre pas dans { $depths } profondeurs de { $angles } angles. Réglez d’abord profondeurs et angles, ou collez une colonne ou une ligne qui tient à partir de l’endroit actuel.
ui-paste-ways = Cela peut se lire de plusieurs façons. Choisissez la bonne ; rien n’est saisi avant.
ui-paste-column = Colonne { $number }, { $count } lectures : { $first } …
ui-paste-row = { $count } lectures : { $first } …
ui-paste-lines-are-depths = Chaque ligne une profondeur : { $first } …
ui-paste-columns-are-depths = Chaque colonne une profondeur : { $first } …
