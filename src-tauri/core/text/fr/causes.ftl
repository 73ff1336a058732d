### Causes : le nom (cause-ID) et une phrase simple pour le client (-about).

cause-loose-seat = Roulement qui a pris du jeu dans son logement
cause-loose-seat-about = Le roulement n’est plus serré dans son logement, donc l’arbre peut bouger.
cause-worn-bearing = Roulement usé
cause-worn-bearing-about = Le roulement est usé et ne tourne plus bien.
cause-squeezed-bearing = Roulement serré
cause-squeezed-bearing-about = Le palier n’est plus rond et serre le roulement, donc il freine.
cause-housing-damage = Palier du roulement abîmé
cause-housing-damage-about = La pièce qui tient le roulement est fissurée ou desserrée.
cause-torn-support-rubber = Caoutchouc du palier déchiré
cause-torn-support-rubber-about = L’anneau de caoutchouc qui tient le roulement est déchiré ou usé.
cause-low-idle = Ralenti trop bas
cause-low-idle-about = Le moteur tourne trop lentement au ralenti, et cela fait cliqueter des pièces entre le moteur et les roues.
cause-early-engagement = L’embrayage prend trop tôt
cause-early-engagement-about = L’embrayage prend au mauvais régime, et cela fait cliqueter des pièces entre le moteur et les roues.
cause-misfire = Ratés d’allumage
cause-misfire-about = Un ou plusieurs cylindres du moteur ont des ratés.
cause-coupling-or-joint = Flector ou cardan usé
cause-coupling-or-joint-about = Un cardan qui relie l’arbre à la pièce voisine est usé ou dur.
cause-shaft-damage = Arbre abîmé
cause-shaft-damage-about = L’arbre lui-même est cabossé, tordu ou mal équilibré.
cause-loose-shield-or-mount = Écran thermique ou support desserré
cause-loose-shield-or-mount-about = Une tôle ou un support près de l’arbre est desserré ou touche.
cause-air-leak = Prise d’air au moteur
cause-air-leak-about = Le moteur aspire de l’air au mauvais endroit, et cela siffle.
cause-normal-character = Aucune de ces causes
cause-normal-character-about = Aucun des défauts de la liste n’est là, et ce que vous entendez est peut-être le bruit propre à cette voiture.
