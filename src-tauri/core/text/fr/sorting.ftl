### Le tri : pourquoi un contrôle vient ensuite ou aucun, surprises, décisions et ce que coûte une mauvaise.

next-informs = C’est ce contrôle qui en dirait le plus.
next-rating = Ce contrôle peut encore aggraver le classement.
stop-nothing-changes = Aucun contrôle encore ouvert ne changerait ce qu’il faut faire.
stop-not-worth = Ce qui reste ouvert en dirait trop peu pour son risque.
stop-all-done = Tous les contrôles possibles sont faits.

surprise-signs-disagree = Les signes se contredisent : aucune cause de la liste ne les explique ensemble. Vérifiez de nouveau les réponses nommées ici.
surprise-not-listed = Quelque chose qui n’est pas dans cette liste est peut-être en jeu : les causes de la liste expliquent peu de ce qui a été trouvé.

judgement-warning-or-caution = Retenir la voiture, ou la laisser rouler jusqu’à la réparation ?
judgement-bearing-now-or-watch = Réparer le roulement maintenant, ou le surveiller ?
judgement-repair-now-or-watch = Réparer cette cause maintenant, ou la surveiller ?

course-hold-back = Ne pas rouler avant réparation
course-drive-until-repair = La laisser rouler jusqu’à la réparation
course-repair-now = Réparer maintenant
course-watch = Surveiller

loss-held-back-in-vain = la voiture a été immobilisée sans besoin
loss-driven-on-a-bad-bearing = on a roulé avec un mauvais roulement
loss-bearing-repair-in-vain = le roulement a été réparé pour rien
loss-bearing-fault-left = le défaut du roulement a continué et a abîmé son palier et l’arbre
loss-repair-in-vain = la réparation a été faite pour rien
loss-fault-left = le défaut a continué

entry-opinion-given = Avis donné
entry-outcome-confirmed = Issue confirmée

layout-file-refused = Un fichier de disposition de cet atelier ne peut pas servir. Corrigez-le, ou sortez-le du dossier layouts ; les autres dispositions marchent.
knowledge-row-refused = Une ligne du savoir propre à cet atelier ne peut pas servir. Corrigez-la, ou sortez-la du dossier knowledge ; les autres lignes marchent.

finding-opinion = { $by } pense : { $cause }. { $reason }
finding-outcome = Trouvé bien présent : { $causes }, dit { $by } ({ $at }).
