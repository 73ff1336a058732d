### Reasons for a rating: rule-ID for the trade, rule-ID-owner for the owner, who may not know the parts.

rule-movement-at-support = Movement where none is allowed, felt by hand or proven by a gauge: the shaft moves at its bearing.
rule-movement-at-support-owner = We felt or measured that the shaft moves at its bearing. It must not move there at all.
rule-housing-broken = The bearing housing is cracked, or one of its fasteners is loose.
rule-housing-broken-owner = The part that holds the bearing is cracked, or a bolt on it is loose.
rule-coupling-failing = A coupling of the shaft is about to fail.
rule-coupling-failing-owner = A joint on the shaft is close to breaking.
rule-shaft-fibre-damaged = The fibre of the shaft is damaged.
rule-shaft-fibre-damaged-owner = The fibre shaft is damaged. It can break without warning.
rule-running-stopped = The engine had to be stopped because of a heavy knock or strong vibration.
rule-running-stopped-owner = We had to stop the engine because of a heavy knock or a strong shake.

rule-rubber-play = The rubber support reaches a stop or gives more than the maker allows, or movement was felt.
rule-rubber-play-owner = The bearing moves in its rubber ring. It moves more than allowed, or we do not know how much is allowed.
rule-turns-badly = The shaft turns roughly, or is hard to turn, by hand.
rule-turns-badly-owner = The shaft does not turn freely by hand.
rule-shaft-damaged = The shaft is dented, or a balance weight is missing.
rule-shaft-damaged-owner = The shaft has a dent, or a small weight that keeps it in balance is gone.
rule-far-end-play = Movement across the shaft, or a clunk, was felt at its far end.
rule-far-end-play-owner = The shaft is loose at its far end.
rule-play-unsure = Movement at the support could not be ruled out: the check was done and left unsure.
rule-play-unsure-owner = We felt for movement at the bearing and could not rule it out.
rule-bearing-likely = Something was felt, seen or left unsure at the bearing, and the signs alone make a bearing fault at least 50% likely.
rule-bearing-likely-owner = What was found so far points to the bearing.

rule-cause-likely = At least 50% likely: { $cause }.
rule-cause-likely-owner = What may be behind it: { $about }
rule-cause-likely-misfire = At least 50% likely: { $cause }. Unburnt fuel from a misfire can overheat and ruin the catalyst.
rule-cause-likely-misfire-owner = What may be behind it: { $about } A misfire can ruin a costly part of the exhaust.
rule-finding-unexplained = Something was heard, felt or seen that no other reason explains. Look closer before you hand the car back.
rule-finding-unexplained-owner = There is something, told to us or found by us, that needs a closer look.
rule-cold-check-buzz = No movement was felt, but with the housing cold or its warmth not recorded. A cold check clears nothing: a bearing seat can loosen when hot. Feel again when it is warm.
rule-cold-check-buzz-owner = We felt for movement with the part cold, but it can be loose when hot.

rule-no-bearing-action = Both play checks are good, the shaft turns smoothly, and nothing else was found.
rule-no-bearing-action-owner = We felt the bearing by hand and found no fault there.
rule-no-bearing-action-not-reproduced = Not reproduced: nothing was heard, both play checks are good and the shaft turns smoothly.
rule-no-bearing-action-not-reproduced-owner = The noise was not reproduced: it did not show while we had the car. We felt the bearing by hand and found no fault there.
rule-no-bearing-action-not-listened = Not reproduced: no running check was done. Both play checks are good and the shaft turns smoothly.
rule-no-bearing-action-not-listened-owner = The noise was not reproduced: we did not run the engine to listen. We felt the bearing by hand and found no fault there.
