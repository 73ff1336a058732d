//! Lamé's thick cylinder: one elastic ring under pressure from within and without, ends free.
//!
//! Source: Boresi & Schmidt, Advanced Mechanics of Materials, 6th ed., chapter 11, second-hand. Lengths in
//! millimetres, stresses in MPa; pressing is below zero.

/// An elastic ring: the bearing's outer ring, a sleeve, or the housing about the seat.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Ring {
    /// Inner radius, millimetres; 0 for a solid one.
    pub inner: f64,
    /// Outer radius, millimetres; infinite for an endless one.
    pub outer: f64,
    /// Young's modulus, MPa.
    pub modulus: f64,
    /// Poisson's ratio: how much it thins for what it stretches.
    pub poisson: f64,
}

/// Equivalent stresses, MPa.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Equivalent {
    /// By Tresca, the greatest shear: never below the other.
    pub tresca: f64,
    /// By von Mises, the energy of distortion.
    pub mises: f64,
}

impl Ring {
    /// Inner radius squared over outer radius squared.
    fn thinness(&self) -> f64 {
        (self.inner / self.outer).powi(2)
    }

    /// How far the bore grows for each MPa within, millimetres on the radius.
    pub fn bore_by_inner(&self) -> f64 {
        let q = self.thinness();
        self.inner / self.modulus * ((1.0 + q) / (1.0 - q) + self.poisson)
    }

    /// How far the rim shrinks for each MPa without, millimetres on the radius.
    pub fn rim_by_outer(&self) -> f64 {
        let q = self.thinness();
        self.outer / self.modulus * ((1.0 + q) / (1.0 - q) - self.poisson)
    }

    /// How far the bore shrinks for each MPa without, millimetres on the radius.
    pub fn bore_by_outer(&self) -> f64 {
        2.0 * self.inner / self.modulus / (1.0 - self.thinness())
    }

    /// How far the rim grows for each MPa within, millimetres on the radius.
    pub fn rim_by_inner(&self) -> f64 {
        2.0 * self.outer * self.thinness() / self.modulus / (1.0 - self.thinness())
    }

    /// Hoop stress at a radius, MPa, under these pressures within and without, MPa.
    pub fn hoop(&self, within: f64, without: f64, radius: f64) -> f64 {
        let (even, curved) = self.parts(within, without, radius);
        even + curved
    }

    /// Radial stress at a radius, MPa, under these pressures within and without, MPa.
    pub fn radial(&self, within: f64, without: f64, radius: f64) -> f64 {
        let (even, curved) = self.parts(within, without, radius);
        even - curved
    }

    /// Hoop stress of the greater size, at bore or rim.
    pub fn largest_hoop(&self, within: f64, without: f64) -> f64 {
        let rim = self.hoop(within, without, self.outer);
        if self.inner == 0.0 {
            return rim;
        }
        let bore = self.hoop(within, without, self.inner);
        if bore.abs() >= rim.abs() { bore } else { rim }
    }

    /// Stress that a tensile test would have to show for the part to yield as it does here: the largest of every
    /// radius, by Tresca (largest difference of two principal stresses) and by von Mises. The ends are free, so the
    /// third principal stress is none. Both are largest at the bore, where the stresses that change with the radius
    /// are. Rules: Boresi & Schmidt, chapter 4, from memory.
    pub fn equivalent(&self, within: f64, without: f64) -> Equivalent {
        let radius = if self.inner > 0.0 { self.inner } else { self.outer };
        let (hoop, radial) = (self.hoop(within, without, radius), self.radial(within, without, radius));
        Equivalent {
            tresca: (hoop - radial).abs().max(hoop.abs()).max(radial.abs()),
            mises: (hoop * hoop - hoop * radial + radial * radial).sqrt(),
        }
    }

    fn parts(&self, within: f64, without: f64, radius: f64) -> (f64, f64) {
        let q = self.thinness();
        let even = (within * q - without) / (1.0 - q);
        let curved = (within - without) * (self.inner / radius).powi(2) / (1.0 - q);
        (even, curved)
    }
}
