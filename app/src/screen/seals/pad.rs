//! A pad for drawing with the finger, and a drawing shown.

use crate::dom::{El, el, svg};
use crate::signal::*;
use pitleaf_translated::tr;
use std::fmt::Write as _;
use wasm_bindgen::JsCast;
use web_sys::{Element, PointerEvent};

/// Strokes as the book has them: points 0 to 255 from the upper left.
pub(super) type Strokes = Vec<Vec<[u8; 2]>>;

/// A drawing.
pub(in crate::screen) fn picture(strokes: &[Vec<[u8; 2]>]) -> El {
    svg("svg")
        .attrs(&[
            ("class", "drawing"),
            ("viewBox", "0 0 255 255"),
            ("role", "img"),
            ("aria-label", tr!("The mark as drawn")),
        ])
        .with(svg("path").attr("d", &path(strokes)))
}

/// The pad: strokes are added as they are drawn.
pub(super) fn pad(strokes: RwSignal<Strokes>) -> El {
    let drawing = RwSignal::new(false);
    let ink = svg("svg")
        .attrs(&[("class", "drawing"), ("viewBox", "0 0 255 255"), ("aria-hidden", "true")])
        .with(svg("path").attr_live("d", move || Some(strokes.with(|strokes| path(strokes)))));
    el("div")
        .class("pad")
        .attrs(&[("role", "img"), ("aria-label", tr!("Draw the mark here with a finger"))])
        .with(ink)
        .on("pointerdown", move |event| {
            if let Some((pad, point, event)) = at(&event) {
                // Without it a line that leaves the pad would end there.
                let _ = pad.set_pointer_capture(event.pointer_id());
                drawing.set(true);
                strokes.update(|strokes| strokes.push(vec![point]));
            }
        })
        .on("pointermove", move |event| {
            if let (true, Some((_, point, _))) = (drawing.get_untracked(), at(&event)) {
                strokes.update(|strokes| {
                    if let Some(stroke) = strokes.last_mut()
                        && stroke.last() != Some(&point)
                    {
                        stroke.push(point);
                    }
                });
            }
        })
        .on("pointerup", move |_| drawing.set(false))
        .on("pointercancel", move |_| drawing.set(false))
}

/// The pad, the point touched, and the touch.
fn at(event: &web_sys::Event) -> Option<(Element, [u8; 2], PointerEvent)> {
    let event = event.dyn_ref::<PointerEvent>()?.clone();
    let pad: Element = event.current_target()?.dyn_into().ok()?;
    let place =
        |offset: i32, size: i32| u8::try_from((offset * 255 / size.max(1)).clamp(0, 255)).ok();
    let point = [
        place(event.offset_x(), pad.client_width())?,
        place(event.offset_y(), pad.client_height())?,
    ];
    Some((pad, point, event))
}

fn path(strokes: &[Vec<[u8; 2]>]) -> String {
    let mut d = String::new();
    for stroke in strokes {
        for (index, [x, y]) in stroke.iter().enumerate() {
            // Writing to a string can't fail.
            let _ = write!(d, "{}{x} {y}", if index == 0 { 'M' } else { 'L' });
        }
        if let [[x, y]] = stroke.as_slice() {
            let _ = write!(d, "L{x} {y}");
        }
    }
    d
}
