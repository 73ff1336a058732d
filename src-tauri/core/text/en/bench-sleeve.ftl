# The new sleeve: its outside, its bore before it is pressed in

fit-sleeve-outside = For this bore the sleeve is { $least } to { $most } across: the least still holds at the highest temperature, the most is still borne at the lowest.
fit-sleeve-outside-least = For this bore the sleeve is at least { $least } across, to hold at the highest temperature. How much is still borne at the lowest is not known: the outside of the housing, or a yield, is missing.
fit-sleeve-outside-unknown = What the sleeve may measure across is not known: give the lowest and the highest temperature.
fit-sleeve-none-holds = NO SLEEVE of this material both holds in this bore at the highest temperature and is borne at the lowest. Take another material, or replace the housing.
fit-sleeve-closes = Pressed in, its bore closes by { $least } to { $most }, { $mean } in the middle.
fit-sleeve-bored = Bore it to { $least } to { $most } before it is pressed in, or to the finished size afterwards.
fit-sleeve-bored-after = The closing varies by more than the seat allows: bore the sleeve after it is pressed in.
