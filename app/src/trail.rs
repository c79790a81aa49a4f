//! The way back where it is not always the same: from finding to where one came from, from what was found
//! back to the answers, and from the gauges to the check they were asked for.

use crate::route::Route;

/// Where finding was begun, and what was last found.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Trail {
    before: Option<Route>,
    found: Option<Route>,
    /// The check that the gauges were looked up from.
    check: Option<Route>,
}

impl Trail {
    /// Another place is gone to.
    pub fn go(&mut self, from: &Route, to: &Route) {
        if *to == Route::Gauges {
            self.check = Some(from.clone()).filter(|from| matches!(from, Route::Check { .. }));
        }
        let is_found = self.found.as_ref() == Some(from);
        if *to == Route::Find {
            if *from != Route::Find && !is_found {
                self.before = Some(from.clone());
            }
        } else if *from == Route::Find {
            self.found = Some(to.clone()).filter(|_| self.before.as_ref() != Some(to));
        } else if self.found.as_ref().is_some_and(|found| found != to && *found != to.parent()) {
            self.found = None;
        }
    }

    /// Where "back" leads from here.
    pub fn back(&self, here: &Route) -> Route {
        if *here == Route::Find {
            self.before.clone().unwrap_or(Route::Bench)
        } else if self.found.as_ref() == Some(here) {
            Route::Find
        } else if *here == Route::Gauges {
            self.check.clone().unwrap_or_else(|| here.parent())
        } else {
            here.parent()
        }
    }
}

#[cfg(test)]
mod tests {
    use super::Trail;
    use crate::route::Route;

    fn check() -> Route {
        Route::Check { row: "end-play".into(), place: String::new() }
    }

    /// Goes from place to place, and says where back leads from the last.
    #[track_caller]
    fn back(places: &[Route], wanted: &Route) {
        let mut trail = Trail::default();
        for pair in places.windows(2) {
            trail.go(&pair[0], &pair[1]);
        }
        assert_eq!(trail.back(&places[places.len() - 1]), *wanted, "{places:?}");
    }

    #[test]
    fn from_the_gauges_back_to_the_check() {
        back(&[check(), Route::Gauges], &check());
        back(&[check(), Route::Gauges, Route::Settings, Route::Gauges], &Route::Settings);
    }

    #[test]
    fn from_finding_back_to_where_one_was() {
        back(&[Route::Convert, Route::Find], &Route::Convert);
        back(&[Route::Find], &Route::Bench);
    }

    #[test]
    fn from_what_was_found_back_to_the_answers_and_on() {
        back(&[Route::Convert, Route::Find, check()], &Route::Find);
        back(&[Route::Convert, Route::Find, check(), Route::Find], &Route::Convert);
        let own = Route::OwnLimit("end-play".into());
        back(&[Route::Convert, Route::Find, check(), own.clone()], &check());
        back(&[Route::Convert, Route::Find, check(), own, check()], &Route::Find);
    }

    #[test]
    fn another_way_to_the_same_place_leads_back_as_ever() {
        back(&[Route::Convert, Route::Find, check(), Route::Book, check()], &Route::Limits);
        back(&[check(), Route::Find, check()], &Route::Limits);
    }
}
