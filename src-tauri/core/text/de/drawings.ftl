### Was jede Zeichnung zeigt, in Worten: beim Antippen, und für alle, die sie nicht sehen können.

drawing-road-speed-vibration = Ein Auto auf der Straße; unter seinem Boden Wellen, die von links nach rechts mit dem Tempo größer werden.
drawing-idle-speed = Ein Drehzahlmesser vom Fahrersitz aus, der Zeiger im Leerlauf.
drawing-idle-noise = Der Fahrersitz mit einem Ohr; Schallwellen kommen von der Welle unter dem Boden.
drawing-idle-raise-effect = Ein Drehzahlmesser, dessen Zeiger vom Leerlauf aus etwas steigt, daneben ein Ohr.
drawing-misfire-evidence = Ein Diagnosegerät mit einem Balken je Zylinder; ein Balken ist höher als die anderen.
drawing-air-leak-by-ear = Ein langer Schlauch von einem Ohr zu einem Ansaugschlauch, an dessen Riss es zischt.
drawing-air-leak-test = Ein Ansaugschlauch, aus dessen Riss Rauch tritt, und eine durchgestrichene Sprühdose.
drawing-engagement-setting = Eine Drehzahlskala mit zwei Marken: Standard des Herstellers und eingestellter Punkt der Kupplung.
drawing-neutral-2500-buzz = Ein Drehzahlmesser, vom Leerlauf auf 2.500 gehoben, ein Schalthebel im Leerlauf, Wellen unter den Füßen des Fahrers.
drawing-running-stop = Eine Hand, die den Motor abstellt.
drawing-creep-noise = Ein Auto, das langsam vorwärts rollt, ein Fuß über der Bremse und ein Ohr.
drawing-engagement-reset-effect = Eine Drehzahlskala mit einem Pfeil von der erhöhten Marke zurück zum Standard.
drawing-housing-look = Eine Lampe, die auf das Lagergehäuse leuchtet; ein Riss, eine lockere Schraube und eine Fettspur sind eingekreist.
drawing-play-vertical = Seitenansicht, das Gehäuse aufgeschnitten. Beide Hände halten die Welle nahe am Lager. Pfeile zeigen auf und ab. Ein Auge beobachtet den Spalt zwischen Lager und Gehäuse.
drawing-play-lateral = Blick längs der Welle. Beide Hände halten sie nahe am Lager. Pfeile zeigen nach links und rechts. Ein Auge beobachtet den Spalt zwischen Welle und Gehäuse.
drawing-tube-open-check = Ein der Länge nach aufgeschnittenes Rohr, darin die Welle auf ihren Lagern, eine Hand an einem davon.
drawing-play-far-end = Zwei Hände halten die Welle an ihrem Ende, neben dem Gelenk. Pfeile zeigen auf und ab und quer zur Welle.
drawing-turn-by-hand = Zwei Hände rollen die Welle um sich selbst, einem Pfeil nach, der um sie herum führt. Die Finger sind weg vom Gelenk.
drawing-coupling-look = Eine Gelenkscheibe mit drei Armen; ein Riss im Gummi und eine lockere Schraube sind eingekreist.
drawing-shaft-look = Die ganze Welle von der Seite; eine Delle, ausgefranste Faser und die Stelle eines verlorenen Gewichts sind eingekreist.
drawing-shield-and-mounts = Ein Hitzeschutzblech nahe der Welle und ein Motorlager; ein Finger drückt gegen das Blech.

drawing-rigid = Wo das Lager sitzt: Die Welle läuft unter dem Boden vom Motor zur Hinterachse. Nahe am Motor sitzt ihr Lager in einem festen Gehäuse aus Metall.
drawing-rubber = Wo das Lager sitzt: Die Welle läuft in zwei Teilen unter dem Boden. Dazwischen sitzt ihr Lager in einem Gummiring.
drawing-tube = Wo das Lager sitzt: Die Welle läuft in einem geschlossenen Rohr unter dem Boden. Ihre Lager sitzen im Rohr.
