### The sorting: why a check is next or none is, surprises, decisions and what a wrong one costs.

next-informs = This check would tell the most.
next-rating = This check could still raise the rating.
stop-nothing-changes = No check that is still open would change what to do.
stop-not-worth = The checks still open would tell too little for their risk.
stop-all-done = Every check that can be done is done.

surprise-signs-disagree = The signs disagree: no cause on the list explains them together. Check the answers named here again.
surprise-not-listed = Something that is not on this list may be behind it: the listed causes explain little of what was found.

judgement-warning-or-caution = Hold the car back, or let it drive until the repair?
judgement-bearing-now-or-watch = Repair the bearing now, or watch it?
judgement-repair-now-or-watch = Repair this cause now, or watch it?

course-hold-back = Not to be driven until it is repaired
course-drive-until-repair = Let it drive until the repair
course-repair-now = Repair now
course-watch = Watch it

loss-held-back-in-vain = the car was kept off the road for nothing
loss-driven-on-a-bad-bearing = it was driven with a bad bearing
loss-bearing-repair-in-vain = the bearing was repaired for nothing
loss-bearing-fault-left = the bearing fault went on and damaged its housing and the shaft
loss-repair-in-vain = the repair was for nothing
loss-fault-left = the fault went on

entry-opinion-given = Opinion given
entry-outcome-confirmed = Outcome confirmed

layout-file-refused = A layout file of this workshop cannot be used. Correct it, or take it out of the layouts folder; the other layouts work.
knowledge-row-refused = A row of this workshop's own knowledge cannot be used. Correct it, or take it out of the knowledge folder; the other rows work.

finding-opinion = { $by } thinks: { $cause }. { $reason }
finding-outcome = Found to be there: { $causes }, says { $by } ({ $at }).
