# The sheet for the customer: the bore before and after

ui-paper-before-after = For the customer
owner-bore-title = The hole that holds your bearing, before and after
owner-bore-about = The bearing sits in a round hole. Where the hole is no longer round, the bearing works loose in it. The drawings show the hole as it was measured.
owner-bore-before = Before the work
owner-bore-after = After the work
owner-bore-not-measured = NOT MEASURED. Nothing is known of its shape.
owner-bore-out = Out of round by { $value }. Limit: { $limit }.
owner-bore-out-least = Out of round by { $value } at least: not all of it could be seen. Limit: { $limit }.
owner-bore-out-no-limit = Out of round by { $value }. No limit is known yet.
owner-bore-out-least-no-limit = Out of round by { $value } at least: not all of it could be seen. No limit is known yet.
owner-bore-within = That is within the limit.
owner-bore-beyond = THAT IS BEYOND THE LIMIT.
owner-bore-unsure = That is too close to the limit, or too little was seen, to say which side it is on.
owner-bore-scale = Both are drawn at one scale: what is not round is shown { $times } times larger. Dashed: a round hole.
owner-bore-alt = { $side }: the hole drawn from its measurements. The sentence below gives the figure.
owner-bore-heading-done = What was done
owner-bore-done-replace = The part that holds the bearing cannot be saved and has to be replaced by another.
owner-bore-done-sleeve-out = An old sleeve was taken out.
owner-bore-done-cut = The worn hole was cut round again, in { $passes ->
    [one] one pass
   *[other] { $passes } passes
    }.
owner-bore-done-cut-partly = The worn hole was cut, in { $passes ->
    [one] one pass
   *[other] { $passes } passes
    }, and is not clean all round yet.
owner-bore-done-sleeve = A new sleeve was fitted to hold the bearing.
owner-bore-done-turns = Put together and cold, the bearing was turned by hand and turns freely.
owner-bore-done-does-not-turn = THE BEARING DOES NOT TURN FREELY. This work is not finished.
owner-bore-done-not-turned = It is not recorded that the bearing turns freely. This work is not finished.
owner-bore-caution-check = This sheet does not say that the car is safe to drive. After the work the workshop feels for movement by hand, and tells you.
owner-bore-caution-limit = The limit is this workshop's rule for a hole of this size. The maker's figure comes first.
owner-bore-caution-record = The repair record holds every figure. Ask for it.
owner-bore-foot = For the customer, visit { $visit }. What is not written here was not measured.
