### How much of a bore was read, what that leaves open, and the one limit for its form.

bore-part = At depth { $depth } only { $read } of 360 degrees were read; the widest gap is { $gap } degrees. What lies in it is not measured: nothing is called round, and the size is that of the part that was read. Read all round, at every 30 degrees or closer.
bore-depths-unread = From { $from } to { $to } from the face no ring was read all round. Taper, waist and wear there are not measured.
bore-seat-width-unknown = How wide the seat is was not given, so nobody can say how much of it was read. Give its width with the readings.
bore-line-size-part = Diameter of the part that was read { $size }, ± { $expanded }, if it is round.
bore-line-roundness-part = Out of round by at least { $value }, ± { $expanded }: only a part of the bore was read.
bore-line-limit = Limit for the form of this seat: { $limit }, half of IT5 at its diameter (ISO 286-1; share after bearing makers' catalogues). Verdict and fit use the same. The maker's figure goes first.
bore-line-limit-unknown = No limit for the form yet: it goes by the diameter. Set the dial in a ring of known size, or work out the fit.

verdict-gap-depths = readings all round near both ends of the seat and between, and how wide the seat is

skim-verdict-read-in-part = What was read is clean after { $passes } passes at the least, { $allow } with the uncertainty. The rest was not read: whether it cleans up there is not known. Read the bore all round before the first cut.

error-bore-read-in-part = The bore was read only in part
error-bore-read-in-part-help = A free axis needs readings all round, at every 30 degrees or closer, at every depth. Read on, or plan about the datum.
error-bore-size-in-part = The bore was read only in part, so its size is not known
error-bore-size-in-part-help = Read it all round, at every 30 degrees or closer, or give the size as a number.

bore-read-two-ways = { $phrase }: “{ $one }” or “{ $other }”
error-bore-two-readings = A number can be read two ways
error-bore-two-readings-help = Write it with a decimal point and without groups of thousands, in every line. In a spreadsheet take the groups out before you save.
