//! Small dense systems of linear equations: elimination with row pivoting, each without a second matrix beside it.

/// A pivot smaller than this share of the largest coefficient is none.
const SINGULAR: f64 = 1e-14;

/// The inverse of a square matrix given by rows; none where it is singular to working precision.
#[expect(clippy::indexing_slicing, reason = "every index is below the number of rows, which each row has")]
pub fn inverse(rows: &[Vec<f64>]) -> Option<Vec<Vec<f64>>> {
    let size = rows.len();
    let least = SINGULAR * largest(rows.iter().flatten());
    let mut work = rows.to_vec();
    let mut swaps = Vec::with_capacity(size);
    for column in 0..size {
        let pivot =
            (column..size).max_by(|a, b| work[*a][column].abs().total_cmp(&work[*b][column].abs()))?;
        work.swap(column, pivot);
        swaps.push(pivot);
        let head = std::mem::replace(&mut work[column][column], 1.0);
        if head.abs() <= least || !head.is_finite() {
            return None;
        }
        for value in &mut work[column] {
            *value /= head;
        }
        let row = work[column].clone();
        for (_, other) in work.iter_mut().enumerate().filter(|(at, _)| *at != column) {
            let factor = std::mem::take(&mut other[column]);
            take_away(other, factor, &row);
        }
    }
    for (column, pivot) in swaps.into_iter().enumerate().rev() {
        for row in &mut work {
            row.swap(column, pivot);
        }
    }
    Some(work)
}

/// The solution of one system; none where it is singular to working precision.
#[expect(clippy::indexing_slicing, reason = "every index is below N")]
pub fn solve<const N: usize>(mut rows: [[f64; N]; N], mut right: [f64; N]) -> Option<[f64; N]> {
    let least = SINGULAR * largest(rows.iter().flatten());
    for column in 0..N {
        let pivot = (column..N).max_by(|a, b| rows[*a][column].abs().total_cmp(&rows[*b][column].abs()))?;
        rows.swap(column, pivot);
        right.swap(column, pivot);
        let head = rows[column][column];
        if head.abs() <= least || !head.is_finite() {
            return None;
        }
        for value in &mut rows[column] {
            *value /= head;
        }
        right[column] /= head;
        let (row, value) = (rows[column], right[column]);
        for other in (0..N).filter(|at| *at != column) {
            let factor = rows[other][column];
            take_away(&mut rows[other], factor, &row);
            right[other] -= factor * value;
        }
    }
    Some(right)
}

fn largest<'v>(values: impl Iterator<Item = &'v f64>) -> f64 {
    values.fold(0.0_f64, |most, value| most.max(value.abs()))
}

fn take_away(row: &mut [f64], factor: f64, other: &[f64]) {
    for (value, other) in row.iter_mut().zip(other) {
        *value -= factor * other;
    }
}

/// The product of a row and a column.
pub fn dot(a: &[f64], b: &[f64]) -> f64 {
    a.iter().zip(b).map(|(a, b)| a * b).sum()
}

#[cfg(test)]
mod tests {
    use super::{inverse, solve};

    #[test]
    fn a_system_is_solved_and_inverted() {
        let rows = [[0.0, 2.0, 1.0], [1.0, -1.0, 0.0], [3.0, 0.0, 4.0]];
        let found = solve(rows, [7.0, -1.0, 15.0]).expect("it has a solution");
        for (found, expected) in found.iter().zip([1.0, 2.0, 3.0]) {
            assert!((found - expected).abs() < 1e-14, "{found}");
        }
        let rows = rows.map(|row| row.to_vec());
        let back = inverse(&rows).and_then(|rows| inverse(&rows)).expect("it has an inverse");
        for (found, expected) in back.iter().flatten().zip(rows.iter().flatten()) {
            assert!((found - expected).abs() < 1e-13, "{found}");
        }
    }

    #[test]
    fn a_singular_system_has_no_answer() {
        assert_eq!(solve([[1.0, 2.0], [2.0, 4.0]], [1.0, 2.0]), None);
        assert_eq!(inverse(&[vec![f64::NAN]]), None);
    }
}
