### Ursachen: der Name (cause-ID) und ein einfacher Satz für den Kunden (-about).

cause-loose-seat = Lager sitzt lose im Gehäuse
cause-loose-seat-about = Das Lager sitzt nicht mehr fest, darum kann sich die Welle bewegen.
cause-worn-bearing = Lager verschlissen
cause-worn-bearing-about = Das Lager selbst ist verschlissen und läuft nicht mehr glatt.
cause-squeezed-bearing = Lager eingeklemmt
cause-squeezed-bearing-about = Das Gehäuse ist unrund und drückt auf das Lager, darum läuft es schwer.
cause-housing-damage = Lagergehäuse beschädigt
cause-housing-damage-about = Das Teil, das das Lager hält, ist gerissen oder locker.
cause-torn-support-rubber = Gummi der Lagerung gerissen
cause-torn-support-rubber-about = Der Gummiring, der das Lager hält, ist gerissen oder ausgeleiert.
cause-low-idle = Leerlauf zu niedrig
cause-low-idle-about = Der Motor dreht im Leerlauf zu langsam, und davon rasseln Teile zwischen Motor und Rädern.
cause-early-engagement = Kupplung greift zu früh
cause-early-engagement-about = Die Kupplung greift bei der falschen Drehzahl, und davon rasseln Teile zwischen Motor und Rädern.
cause-misfire = Zündaussetzer
cause-misfire-about = Im Motor setzen ein oder mehrere Zylinder aus.
cause-coupling-or-joint = Gelenkscheibe oder Gelenk verschlissen
cause-coupling-or-joint-about = Ein Gelenk, das die Welle mit dem Teil daneben verbindet, ist verschlissen oder schwergängig.
cause-shaft-damage = Welle beschädigt
cause-shaft-damage-about = Die Welle selbst hat eine Delle, ist krumm oder hat eine Unwucht.
cause-loose-shield-or-mount = Schutzblech oder Aggregatelager locker
cause-loose-shield-or-mount-about = Ein Blech oder ein Halter nahe der Welle ist locker oder streift.
cause-air-leak = Motor zieht Nebenluft
cause-air-leak-about = Der Motor saugt Luft an, wo er nicht soll, und das zischt.
cause-normal-character = Keine dieser Ursachen
cause-normal-character-about = Keiner der gelisteten Fehler liegt vor, und was Sie hören, kann zu diesem Auto gehören.
