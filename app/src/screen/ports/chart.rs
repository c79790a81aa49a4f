//! The area curve under the plate, its events, and the slider that turns the shaft.

use super::Plate;
use super::picture::path;
use crate::device;
use crate::dom::{El, button, el, svg, text};
use crate::signal::*;
use pitleaf_core::ports::{Stage, chart};
use pitleaf_translated::tr;
use std::cell::Cell;
use std::rc::Rc;
use uom::si::angle::degree;
use uom::si::f64::Angle;

/// The curves with the hand of the first chamber, and paler ones of the other two.
pub(super) fn area_chart(plate: &Plate, tenths: RwSignal<i32>) -> El {
    let sweeps: Vec<_> = plate.ports.iter().map(|port| &port.sweep).collect();
    let drawn = chart::Chart::of(&sweeps, plate.face.view);
    let stage = |i: usize| {
        if plate.ports[i].name.stage == Stage::Stock { "stock" } else { "cut" }
    };
    let curves = drawn.curves.iter().enumerate();
    let curves = curves.map(|(i, data)| path(&format!("curve {}", stage(i)), data));
    let events = drawn.events.iter().enumerate().flat_map(|(i, events)| {
        let class = format!("event {}", stage(i));
        events
            .iter()
            .flat_map(|(opens, closes)| [*opens, *closes])
            .map(move |x| path(&class, &format!("M{x} 0V{}", chart::HEIGHT)))
            .collect::<Vec<_>>()
    });
    let hand = |class: &str, ahead: i32| {
        path(class, &format!("M0 -8V{}", chart::HEIGHT)).attr_live("transform", move || {
            let x = (tenths.get() + ahead).rem_euclid(10 * chart::WIDTH) / 10;
            Some(format!("translate({x})"))
        })
    };
    let centres = path("centres", &format!("M270 0V{0}M540 0V{0}M810 0V{0}", chart::HEIGHT));
    let picture = svg("svg")
        .attrs(&[
            ("class", "area-chart"),
            ("viewBox", &format!("0 -8 {} {}", chart::WIDTH, chart::HEIGHT + 8)),
            ("preserveAspectRatio", "none"),
            ("aria-hidden", "true"),
        ])
        .with(centres)
        .with_all(curves)
        .with_all(events)
        .with(hand("hand other", 3600))
        .with(hand("hand other", 7200))
        .with(hand("hand", 0));
    let names = el("div").class("chart-names").attr("aria-hidden", "true").with_all(
        [tr!("ignition"), tr!("bottom"), tr!("top"), tr!("bottom"), tr!("ignition")]
            .map(|name| text("span", "", name)),
    );
    el("div").class("chart").with(picture).with(names)
}

/// The slider over the cycle, with play and single steps.
pub(super) fn turning(tenths: RwSignal<i32>, where_now: impl Fn() -> String + 'static) -> El {
    let playing = RwSignal::new(false);
    let slider = el("input")
        .attrs(&[
            ("type", "range"),
            ("class", "turn"),
            ("min", "0"),
            ("max", "10799"),
            ("step", "1"),
            ("aria-label", tr!("Shaft angle")),
        ])
        .attr_live("aria-valuetext", move || Some(where_now()));
    let slider = {
        let text = RwSignal::new(tenths.get_untracked().to_string());
        crate::dom::follow(move || text.set(tenths.get().to_string()));
        slider.bound(text).on("input", move |event| {
            if let Ok(at) = event_target_value(&event).parse() {
                playing.set(false);
                tenths.set(at);
            }
        })
    };
    let step = move |by: f64| {
        playing.set(false);
        tenths.update(|at| *at = chart::turned_on(*at, Angle::new::<degree>(by)));
    };
    let play = move || {
        playing.update(|is| *is = !*is);
        if playing.get_untracked() {
            run(tenths, playing);
        }
    };
    let keys = el("div")
        .class("turn-keys")
        .with(button("unit", "−1°", move || step(-1.0)))
        .with(
            button("unit", "", play)
                .text_live(move || {
                    if playing.get() { tr!("Stop") } else { tr!("Play slowly") }.to_owned()
                })
                .pressed(move || playing.get()),
        )
        .with(button("unit", "+1°", move || step(1.0)));
    el("div").with(slider).with(keys)
}

/// Degrees of the shaft in a second of play.
const SPEED: f64 = 45.0;

/// Turns the shaft frame by frame until it is stopped or the screen goes.
fn run(tenths: RwSignal<i32>, playing: RwSignal<bool>) {
    fn frame(tenths: RwSignal<i32>, playing: RwSignal<bool>, last: Rc<Cell<u64>>) {
        request_animation_frame(move || {
            // The screen may be gone by now, and its signals with it.
            if playing.try_get_untracked() != Some(true) {
                return;
            }
            let now = device::now();
            let past = now.saturating_sub(last.replace(now)).min(100);
            #[expect(clippy::cast_precision_loss, reason = "at most a hundred")]
            let by = Angle::new::<degree>(SPEED * past as f64 / 1000.0);
            tenths.update(|at| *at = chart::turned_on(*at, by));
            frame(tenths, playing, last);
        });
    }
    frame(tenths, playing, Rc::new(Cell::new(device::now())));
}
