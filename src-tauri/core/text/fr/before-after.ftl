# The sheet for the customer: the bore before and after

ui-paper-before-after = Pour le client
owner-bore-title = Le trou qui tient votre roulement, avant et après
owner-bore-about = Le roulement est logé dans un trou rond. Là où le trou n’est plus rond, le roulement y prend du jeu. Les dessins montrent le trou tel que mesuré.
owner-bore-before = Avant le travail
owner-bore-after = Après le travail
owner-bore-not-measured = NON MESURÉ. On ne sait rien de sa forme.
owner-bore-out = Écart au rond : { $value }. Limite : { $limit }.
owner-bore-out-least = Écart au rond : au moins { $value }, car tout n’a pas pu être vu. Limite : { $limit }.
owner-bore-out-no-limit = Écart au rond : { $value }. Aucune limite n’est encore connue.
owner-bore-out-least-no-limit = Écart au rond : au moins { $value }, car tout n’a pas pu être vu. Aucune limite n’est encore connue.
owner-bore-within = C’est dans la limite.
owner-bore-beyond = C’EST AU-DELÀ DE LA LIMITE.
owner-bore-unsure = C’est trop près de la limite, ou trop peu a été vu, pour dire de quel côté.
owner-bore-scale = Les deux sont dessinés à la même échelle : ce qui n’est pas rond est montré { $times } fois plus grand. Tirets : un trou rond.
owner-bore-alt = { $side } : le trou dessiné d’après ses mesures. La phrase dessous donne la valeur.
owner-bore-heading-done = Ce qui a été fait
owner-bore-done-replace = La pièce qui tient le roulement ne peut pas être sauvée et doit être remplacée par une autre.
owner-bore-done-sleeve-out = Une ancienne bague a été sortie.
owner-bore-done-cut = Le trou usé a été retaillé rond, en { $passes ->
    [one] une passe
   *[other] { $passes } passes
    }.
owner-bore-done-cut-partly = Le trou usé a été retaillé, en { $passes ->
    [one] une passe
   *[other] { $passes } passes
    }, et n’est pas encore net sur tout le tour.
owner-bore-done-sleeve = Une nouvelle bague a été montée pour tenir le roulement.
owner-bore-done-turns = Remonté et froid, le roulement a été tourné à la main et tourne librement.
owner-bore-done-does-not-turn = LE ROULEMENT NE TOURNE PAS LIBREMENT. Ce travail n’est pas fini.
owner-bore-done-not-turned = Il n’est pas noté que le roulement tourne librement. Ce travail n’est pas fini.
owner-bore-caution-check = Cette feuille ne dit pas que la voiture est sûre. Après le travail, l’atelier cherche du mouvement à la main et vous dit ce qu’il trouve.
owner-bore-caution-limit = La limite est la règle de cet atelier pour un trou de cette taille. La valeur du constructeur passe d’abord.
owner-bore-caution-record = Le compte rendu de réparation contient toutes les valeurs. Demandez-le.
owner-bore-foot = Pour le client, visite { $visit }. Ce qui n’est pas écrit ici n’a pas été mesuré.
