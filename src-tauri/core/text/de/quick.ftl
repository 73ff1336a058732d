### Die Prüfung von Hand als eigener Weg, und was das Auto hält.

ui-lift-kind = Was hält das Auto?
ui-lift-kind-why = Danach kommen die Freigaben dafür, höchstens sieben.
lift-two-post = Zwei-Säulen-Bühne
lift-platform = Fahrbahnbühne
lift-pit = Grube
lift-ramps = Auffahrrampen
lift-stands = Böcke

order-hands-on = Nur die Prüfung von Hand
ui-order-hands-on-about = Unter dem Auto: ansehen, was das Lager hält, Spiel in beiden Richtungen fühlen, dann steht die Einstufung. Der Rest kann folgen.
ui-find-out-why = Herausfinden, woher das Geräusch kommt
ui-find-out-why-about = Die Prüfung von Hand ist fertig. Die übrigen Schritte suchen die Ursache.
ui-leave-part = Diesen Teil verlassen
ui-lift-changed = Auto abgesenkt oder bewegt, oder jemand eingestiegen? Zuerst diesen Teil verlassen.
ui-gate-again = Schon bestätigt von { $by }, { $when }.
ui-gate-again-part = Stimmt nicht mehr? Diesen Teil verlassen: dann werden seine Freigaben neu bestätigt.

## Den letzten Eintrag zurücknehmen: was es ist, bevor er geht.
ui-undo-by = Von { $by }, { $when }
ui-undo-others = Das hat { $by } eingetragen, nicht Sie. Zurücknehmen?
ui-undo-do = Zurücknehmen
ui-undo-keep = Stehen lassen
ui-undone = Zurückgenommen: { $what }
ui-undone-what = { $about ->
    [none] { $what }
   *[other] { $what }, { $about }
}
ui-redo = Wieder eintragen
ui-redo-gate = Eine Freigabe wird am Auto neu bestätigt, in ihrer Zeile.
ui-redo-photo = Ein Foto wird mit der Kamera neu aufgenommen.
ui-redo-gauge = Messwerte werden auf der Seite der Messuhr neu eingegeben.

## Neben der Taste, die gedrückt wurde.
ui-recorded = Eingetragen.
