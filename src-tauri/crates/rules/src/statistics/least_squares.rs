//! Weighted least squares, and what a combination of the coefficients comes to with its interval.
//!
//! The columns are made orthogonal by Gram and Schmidt's method, twice over, which holds the certified values of
//! NIST's regression data to all but the last digits. No crate is used: of those in the registry, the ones that
//! do this bring whole linear algebra for the sake of six columns.

use super::quantile;

/// A fit of `y` by columns.
#[derive(Debug, Clone)]
pub(crate) struct Fit {
    /// The columns made orthonormal, each row scaled by the root of its weight.
    orthonormal: Vec<Vec<f64>>,
    /// The upper triangle that leads from them to the columns: `columns[k] = Σ orthonormal[j] triangle[k][j]`.
    triangle: Vec<Vec<f64>>,
    root_weights: Vec<f64>,
    coefficients: Vec<f64>,
    residuals: Vec<f64>,
}

/// A combination of coefficients: its value, how sure that is, and for how many degrees of freedom it counts.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Contrast {
    /// Its value.
    pub estimate: f64,
    /// The share of the variance that comes of each group.
    pub variances: [f64; 2],
    /// The degrees of freedom of each group's spread.
    pub freedoms: [f64; 2],
    /// What each group's variance is multiplied with to give its share; 1 over the count for a plain mean.
    pub factors: [f64; 2],
}

impl Fit {
    /// Fits `y`; each column and `weights` are as long as it, and the weights are above 0.
    ///
    /// `None` when a column follows from those before it, or when there are fewer rows than columns.
    pub fn new(columns: &[Vec<f64>], y: &[f64], weights: &[f64]) -> Option<Fit> {
        let root_weights: Vec<f64> = weights.iter().map(|weight| weight.sqrt()).collect();
        let mut orthonormal: Vec<Vec<f64>> = Vec::with_capacity(columns.len());
        let mut triangle = Vec::with_capacity(columns.len());
        for column in columns {
            let mut rest = times(column, &root_weights);
            let length = dot(&rest, &rest).sqrt();
            let mut parts = split(&mut rest, &orthonormal);
            let left = dot(&rest, &rest).sqrt();
            // Of an exact copy rounding leaves about 1e-16 of its length.
            if left.is_nan() || left <= 1e-10 * length {
                return None;
            }
            for value in &mut rest {
                *value /= left;
            }
            parts.push(left);
            triangle.push(parts);
            orthonormal.push(rest);
        }
        let fit =
            Fit { orthonormal, triangle, root_weights, coefficients: Vec::new(), residuals: Vec::new() };
        (y.len() >= columns.len()).then(|| fit.of(y))
    }

    /// The same columns and weights with another `y`.
    #[must_use]
    pub fn of(mut self, y: &[f64]) -> Fit {
        let mut rest = times(y, &self.root_weights);
        let parts = split(&mut rest, &self.orthonormal);
        self.coefficients = self.back(parts);
        self.residuals = rest.iter().zip(&self.root_weights).map(|(value, root)| value / root).collect();
        self
    }

    /// Solves `triangle x = parts` from the last unknown to the first.
    fn back(&self, mut parts: Vec<f64>) -> Vec<f64> {
        for unknown in (0..parts.len()).rev() {
            parts[unknown] /= self.triangle[unknown][unknown];
            for earlier in 0..unknown {
                parts[earlier] -= self.triangle[unknown][earlier] * parts[unknown];
            }
        }
        parts
    }

    /// Solves `triangleᵀ x = row` from the first unknown to the last.
    fn forward(&self, row: &[f64]) -> Vec<f64> {
        let mut solved: Vec<f64> = Vec::with_capacity(self.triangle.len());
        for column in 0..self.triangle.len() {
            let value = row.get(column).copied().unwrap_or(0.0);
            let known = dot(&self.triangle[column][..column], &solved);
            solved.push((value - known) / self.triangle[column][column]);
        }
        solved
    }

    /// One for each column.
    pub fn coefficients(&self) -> &[f64] {
        &self.coefficients
    }

    /// What is left of `y`, unweighted.
    pub fn residuals(&self) -> &[f64] {
        &self.residuals
    }

    /// What the fit says for a row of values of the columns; where the row is shorter, nought stands for the rest.
    pub fn at(&self, row: &[f64]) -> f64 {
        dot(row, &self.coefficients)
    }

    /// How unsure that is: its variance as a multiple of the variance of a value with weight 1.
    pub fn doubt(&self, row: &[f64]) -> f64 {
        let solved = self.forward(row);
        dot(&solved, &solved)
    }

    /// How much each value of `y` counts in the combination `row` of the coefficients.
    pub fn shares(&self, row: &[f64]) -> Vec<f64> {
        let solved = self.forward(row);
        let share = |at: usize| -> f64 {
            let sum: f64 = self.orthonormal.iter().zip(&solved).map(|(column, part)| column[at] * part).sum();
            sum * self.root_weights[at]
        };
        (0..self.residuals.len()).map(share).collect()
    }

    /// The combination `row` of the coefficients, where each group of values has a spread of its own.
    ///
    /// `second` says for each value whether it belongs to the second group. With two columns that tell the groups
    /// apart and equal weights this is Welch's comparison of two means (The generalization of 'Student's' problem
    /// when several different population variances are involved, Biometrika 34, 1947; from memory); with more
    /// columns the coefficients take up degrees of freedom where they have their hold. `None` when a group has
    /// none left.
    pub fn contrast(&self, row: &[f64], second: &[bool]) -> Option<Contrast> {
        let mut squares = [0.0; 2];
        let mut freedoms = [0.0; 2];
        let mut factors = [0.0; 2];
        for (at, share) in self.shares(row).into_iter().enumerate() {
            let group = usize::from(second[at]);
            let root = self.root_weights[at];
            squares[group] += (self.residuals[at] * root).powi(2);
            freedoms[group] +=
                1.0 - self.orthonormal.iter().map(|column| column[at] * column[at]).sum::<f64>();
            factors[group] += (share / root).powi(2);
        }
        let mut variances = [0.0; 2];
        for group in 0..2 {
            if factors[group] > 0.0 {
                if freedoms[group] < 0.5 {
                    return None;
                }
                variances[group] = factors[group] * squares[group] / freedoms[group];
            }
        }
        Some(Contrast { estimate: self.at(row), variances, freedoms, factors })
    }
}

impl Contrast {
    /// The variance of the estimate.
    pub fn variance(&self) -> f64 {
        self.variances.iter().sum()
    }

    /// The degrees of freedom, by Satterthwaite's approximation.
    pub fn freedom(&self) -> f64 {
        let parts = self.variances.iter().zip(&self.freedoms).filter(|(variance, _)| **variance > 0.0);
        let sum: f64 = parts.map(|(variance, freedom)| variance * variance / freedom).sum();
        self.variance().powi(2) / sum
    }

    /// How far to either side the value may lie in 95 cases of 100, when `more` variance comes in from elsewhere.
    pub fn margin(&self, more: f64) -> Option<f64> {
        let variance = self.variance();
        if variance <= 0.0 {
            return Some(1.96 * more.sqrt());
        }
        // What comes in is taken as known, and so dilutes the doubt about the spread.
        let freedom = self.freedom() * ((variance + more) / variance).powi(2);
        quantile(0.975, freedom).map(|t| t * (variance + more).sqrt())
    }
}

/// Takes the part along each orthonormal column out of `rest`, twice because once leaves rounding behind.
fn split(rest: &mut [f64], orthonormal: &[Vec<f64>]) -> Vec<f64> {
    let mut parts = vec![0.0; orthonormal.len()];
    for _ in 0..2 {
        for (column, part) in orthonormal.iter().zip(&mut parts) {
            let along = dot(rest, column);
            *part += along;
            rest.iter_mut().zip(column).for_each(|(value, other)| *value -= along * other);
        }
    }
    parts
}

fn times(a: &[f64], b: &[f64]) -> Vec<f64> {
    a.iter().zip(b).map(|(a, b)| a * b).collect()
}

/// Of what both have, in four sums, which do not wait for each other and which the compiler adds at once.
fn dot(a: &[f64], b: &[f64]) -> f64 {
    let both = a.len().min(b.len());
    let (fours_of_a, rest_of_a) = a[..both].as_chunks::<4>();
    let (fours_of_b, rest_of_b) = b[..both].as_chunks::<4>();
    let mut sums = [0.0; 4];
    for (four_of_a, four_of_b) in fours_of_a.iter().zip(fours_of_b) {
        for lane in 0..4 {
            sums[lane] += four_of_a[lane] * four_of_b[lane];
        }
    }
    sums.iter().sum::<f64>() + rest_of_a.iter().zip(rest_of_b).map(|(a, b)| a * b).sum::<f64>()
}
