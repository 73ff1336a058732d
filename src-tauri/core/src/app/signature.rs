//! What is taken for somebody's signature on the glass: more than a dot, a touch or one short swipe.

/// How long all strokes are at least, in widths of the pad. Common practice, no source: half the pad, about a name.
const LEAST: f32 = 0.5;
/// The same of strokes that go up or down as well as across, as letters do.
const LEAST_OF_LETTERS: f32 = 0.3;
/// From which way on, in widths of the pad, strokes go in a direction.
const DIRECTION: f32 = 0.1;

/// Whether strokes, in shares of a pad that is twice as wide as high, are a signature.
pub(super) fn is_written(strokes: &[Vec<[f32; 2]>]) -> bool {
    let (mut length, mut across, mut upright) = (0.0, 0.0, 0.0);
    for (before, after) in strokes.iter().flat_map(|stroke| stroke.iter().zip(stroke.iter().skip(1))) {
        let ([x0, y0], [x1, y1]) = (*before, *after);
        let (dx, dy) = ((x1 - x0).abs(), (y1 - y0).abs() / 2.0);
        length += dx.hypot(dy);
        across += dx;
        upright += dy;
    }
    let has_letters = across >= DIRECTION && upright >= DIRECTION;
    length >= LEAST || (has_letters && length >= LEAST_OF_LETTERS)
}

#[cfg(test)]
mod tests {
    use super::is_written;

    #[track_caller]
    fn check(what: &str, strokes: &[&[[f32; 2]]], expected: bool) {
        let strokes: Vec<Vec<[f32; 2]>> = strokes.iter().map(|stroke| stroke.to_vec()).collect();
        assert_eq!(is_written(&strokes), expected, "{what}");
    }

    #[test]
    fn a_slip_of_the_finger_is_no_signature() {
        check("nothing", &[], false);
        check("a dot", &[&[[0.5, 0.5]]], false);
        check("three dots", &[&[[0.1, 0.5]], &[[0.5, 0.5]], &[[0.9, 0.5]]], false);
        check("a touch that slips", &[&[[0.5, 0.5], [0.504, 0.5]]], false);
        check("a short swipe", &[&[[0.3, 0.5], [0.5, 0.5]]], false);
        check("a line from top to bottom", &[&[[0.5, 0.1], [0.5, 0.9]]], false);
        check("no number", &[&[[0.1, 0.5], [f32::NAN, 0.5]]], false);
    }

    #[test]
    fn a_name_a_cross_and_a_long_line_are_signatures() {
        check("an arch", &[&[[0.2, 0.4], [0.5, 0.7], [0.8, 0.3]]], true);
        check("a cross", &[&[[0.3, 0.3], [0.5, 0.7]], &[[0.5, 0.3], [0.3, 0.7]]], true);
        check("a long line", &[&[[0.2, 0.5], [0.75, 0.5]]], true);
        let zigzag: Vec<[f32; 2]> =
            (0..8).map(|at| [0.4 + 0.02 * at as f32, if at % 2 == 0 { 0.4 } else { 0.6 }]).collect();
        check("small letters", &[&zigzag], true);
    }
}
