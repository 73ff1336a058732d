//! Small dense systems of linear equations: elimination with row pivoting.

/// The inverse of a square matrix given by rows; none where it is singular to working precision.
pub fn inverse(rows: &[Vec<f64>]) -> Option<Vec<Vec<f64>>> {
    let size = rows.len();
    let mut work: Vec<Vec<f64>> = rows
        .iter()
        .enumerate()
        .map(|(at, row)| {
            let unit = (0..size).map(|column| if column == at { 1.0 } else { 0.0 });
            row.iter().copied().chain(unit).collect()
        })
        .collect();
    eliminate(&mut work)?;
    Some(work.into_iter().map(|row| row.into_iter().skip(size).collect()).collect())
}

/// The solution of one system; none where it is singular to working precision.
pub fn solve(rows: &[Vec<f64>], right: &[f64]) -> Option<Vec<f64>> {
    let mut work: Vec<Vec<f64>> = rows
        .iter()
        .zip(right)
        .map(|(row, right)| row.iter().copied().chain(std::iter::once(*right)).collect())
        .collect();
    eliminate(&mut work)?;
    work.into_iter().map(|row| row.last().copied()).collect()
}

/// The product of a row and a column.
pub fn dot(a: &[f64], b: &[f64]) -> f64 {
    a.iter().zip(b).map(|(a, b)| a * b).sum()
}

/// Turns the left square of the rows into the unit matrix.
#[expect(clippy::indexing_slicing, reason = "every index is below the number of rows, which each row has")]
fn eliminate(work: &mut [Vec<f64>]) -> Option<()> {
    let size = work.len();
    let largest = work.iter().flatten().fold(0.0_f64, |most, value| most.max(value.abs()));
    for column in 0..size {
        let pivot =
            (column..size).max_by(|a, b| work[*a][column].abs().total_cmp(&work[*b][column].abs()))?;
        work.swap(column, pivot);
        let head = work[column][column];
        if head.abs() <= largest * 1e-14 || !head.is_finite() {
            return None;
        }
        for value in &mut work[column] {
            *value /= head;
        }
        let row = work[column].clone();
        for (_, other) in work.iter_mut().enumerate().filter(|(at, _)| *at != column) {
            let factor = other[column];
            for (value, pivot) in other.iter_mut().zip(&row) {
                *value -= factor * pivot;
            }
        }
    }
    Some(())
}

#[cfg(test)]
mod tests {
    use super::{inverse, solve};

    #[test]
    fn a_system_is_solved_and_inverted() {
        let rows = vec![vec![0.0, 2.0, 1.0], vec![1.0, -1.0, 0.0], vec![3.0, 0.0, 4.0]];
        let found = solve(&rows, &[7.0, -1.0, 15.0]).expect("it has a solution");
        for (found, expected) in found.iter().zip([1.0, 2.0, 3.0]) {
            assert!((found - expected).abs() < 1e-14, "{found}");
        }
        let back = inverse(&rows).and_then(|rows| inverse(&rows)).expect("it has an inverse");
        for (found, expected) in back.iter().flatten().zip(rows.iter().flatten()) {
            assert!((found - expected).abs() < 1e-13, "{found}");
        }
    }

    #[test]
    fn a_singular_system_has_no_answer() {
        assert_eq!(solve(&[vec![1.0, 2.0], vec![2.0, 4.0]], &[1.0, 2.0]), None);
        assert_eq!(inverse(&[vec![f64::NAN]]), None);
    }
}
