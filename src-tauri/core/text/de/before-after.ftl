# The sheet for the customer: the bore before and after

ui-paper-before-after = Für den Kunden
owner-bore-title = Die Bohrung, die Ihr Lager hält, vorher und nachher
owner-bore-about = Das Lager sitzt in einer runden Bohrung. Ist sie nicht mehr rund, arbeitet sich das Lager darin lose. Die Zeichnungen zeigen die Bohrung, wie sie gemessen wurde.
owner-bore-before = Vor der Arbeit
owner-bore-after = Nach der Arbeit
owner-bore-not-measured = NICHT GEMESSEN. Über ihre Form ist nichts bekannt.
owner-bore-out = Unrund um { $value }. Grenze: { $limit }.
owner-bore-out-least = Unrund um mindestens { $value }: Nicht alles war zu sehen. Grenze: { $limit }.
owner-bore-out-no-limit = Unrund um { $value }. Eine Grenze ist noch nicht bekannt.
owner-bore-out-least-no-limit = Unrund um mindestens { $value }: Nicht alles war zu sehen. Eine Grenze ist noch nicht bekannt.
owner-bore-within = Das liegt innerhalb der Grenze.
owner-bore-beyond = DAS LIEGT ÜBER DER GRENZE.
owner-bore-unsure = Das liegt zu nahe an der Grenze, oder es war zu wenig zu sehen, um zu sagen, auf welcher Seite.
owner-bore-scale = Beide im gleichen Maßstab gezeichnet: Was nicht rund ist, ist { $times }-mal größer gezeigt. Gestrichelt: eine runde Bohrung.
owner-bore-alt = { $side }: die Bohrung, aus ihren Messwerten gezeichnet. Der Satz darunter nennt die Zahl.
owner-bore-heading-done = Was gemacht wurde
owner-bore-done-replace = Das Teil, das das Lager hält, ist nicht zu retten und muss durch ein anderes ersetzt werden.
owner-bore-done-sleeve-out = Eine alte Hülse wurde herausgenommen.
owner-bore-done-cut = Die verschlissene Bohrung wurde wieder rund gedreht, in { $passes ->
    [one] einem Durchgang
   *[other] { $passes } Durchgängen
    }.
owner-bore-done-cut-partly = Die verschlissene Bohrung wurde gedreht, in { $passes ->
    [one] einem Durchgang
   *[other] { $passes } Durchgängen
    }, und ist noch nicht rundum sauber.
owner-bore-done-sleeve = Eine neue Hülse wurde eingesetzt, die das Lager hält.
owner-bore-done-turns = Zusammengebaut und kalt wurde das Lager von Hand gedreht und dreht sich frei.
owner-bore-done-does-not-turn = DAS LAGER DREHT SICH NICHT FREI. Diese Arbeit ist nicht fertig.
owner-bore-done-not-turned = Dass sich das Lager frei dreht, ist nicht eingetragen. Diese Arbeit ist nicht fertig.
owner-bore-caution-check = Dieses Blatt sagt nicht, dass das Auto sicher fährt. Nach der Arbeit fühlt die Werkstatt von Hand nach Bewegung und sagt Ihnen, was sie findet.
owner-bore-caution-limit = Die Grenze ist die Regel dieser Werkstatt für eine Bohrung dieser Größe. Die Angabe des Herstellers geht vor.
owner-bore-caution-record = Der Reparaturnachweis enthält jede Zahl. Fragen Sie danach.
owner-bore-foot = Für den Kunden, Vorgang { $visit }. Was hier nicht steht, wurde nicht gemessen.
