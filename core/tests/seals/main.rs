//! Seals, checked against the outside and against independent brute force.

#[cfg(test)]
mod assignment;
#[cfg(test)]
mod bracket;
#[cfg(test)]
mod grinding;
#[cfg(test)]
mod growth;
#[cfg(test)]
mod hot_gap_sheet;
#[cfg(test)]
mod leaves;
#[cfg(test)]
mod loose;
#[cfg(test)]
mod next_leaf;
#[cfg(test)]
mod place;
#[cfg(test)]
mod set;
#[cfg(test)]
mod spoken;
#[cfg(test)]
mod spread;
#[cfg(test)]
mod state;

#[cfg(test)]
mod bench {
    //! Short ways to write down what lies on the bench.

    use pitleaf_core::limits::{Edge, Limit};
    use pitleaf_core::quantity::{Amount, Bounds, Dimension, Unit};
    use pitleaf_core::seals::{Ground, GroundBy, Leaf, LeafSet, Outcome, Stack, Trial, Written};

    pub(crate) fn micrometres(count: i64) -> Amount {
        Amount::whole(count, Unit::Micrometre)
    }

    pub(crate) fn written(text: &str) -> Written {
        Written::read(text, Unit::Millimetre, Bounds::widest(Dimension::Length)).unwrap()
    }

    pub(crate) fn stack(texts: &[&str]) -> Stack {
        Stack::of(texts.iter().map(|text| Leaf::read(text, Unit::Millimetre).unwrap()).collect())
            .unwrap()
    }

    pub(crate) fn stack_of_micrometres(marks: &[i64]) -> Stack {
        let leaves =
            marks.iter().map(|mark| Leaf::read(&mark.to_string(), Unit::Micrometre).unwrap());
        Stack::of(leaves.collect()).unwrap()
    }

    pub(crate) fn set_of_micrometres(marks: &[i64], tolerance: i64) -> LeafSet {
        let leaves =
            marks.iter().map(|mark| Leaf::read(&mark.to_string(), Unit::Micrometre).unwrap());
        LeafSet::of("bench", leaves.collect(), written(&format!("{tolerance} µm"))).unwrap()
    }

    pub(crate) fn strokes(count: u32) -> Option<Ground> {
        Some(Ground { count, by: GroundBy::Strokes })
    }

    pub(crate) fn trial(
        outcome: Outcome,
        marks: &[i64],
        tolerance: i64,
        ground: Option<Ground>,
    ) -> Trial {
        let tolerance = written(&format!("{tolerance} µm"));
        match marks {
            [] => Trial::without_leaves(outcome, ground).unwrap(),
            marks => {
                Trial::with_leaves(outcome, stack_of_micrometres(marks), tolerance, ground).unwrap()
            }
        }
    }

    pub(crate) fn limit(lower: Option<&str>, upper: Option<&str>) -> Limit {
        let edge = |text: Option<&str>| text.map(|t| Edge::read(t, Unit::Millimetre).unwrap());
        Limit { lower: edge(lower), upper: edge(upper), wear: None }
    }

    pub(crate) fn limit_of_micrometres(lower: Option<i64>, upper: Option<i64>) -> Limit {
        let text = |mark: Option<i64>| mark.map(|mark| format!("{mark} µm"));
        limit(text(lower).as_deref(), text(upper).as_deref())
    }
}
