//! How fast the machine is now, so that a budget of time says something of the app and not of its neighbours.

use crate::{Browser, percentile};

/// What the work below takes at four-fold throttling where nothing else runs, in milliseconds.
const QUIET: f64 = 60.0;

/// How many times slower the page runs than where the budgets were set, with nothing else running; at least 1.
/// By a fixed piece of work that has nothing to do with the app: a little arithmetic, and a list to be drawn.
///
/// # Panics
/// The page does not answer.
#[must_use]
pub fn slower(phone: &Browser) -> f64 {
    let times = phone.run_until_called(WORK, &[]);
    (percentile(&times, 50) / QUIET).max(1.0)
}

/// The times of eleven pieces, with room between them as between touches.
const WORK: &str = "
    const [done] = arguments;
    const times = [];
    const list = document.createElement('ol');
    list.style = 'position: fixed; inset: 0; margin: 0; overflow: hidden; background: white; color: black';
    document.body.append(list);
    const next = () => {
        if (times.length === 11) { list.remove(); return done(times); }
        requestAnimationFrame(() => {
            const start = performance.now();
            let state = 1;
            list.replaceChildren(...Array.from({ length: 150 }, () => {
                for (let at = 0; at < 5000; at += 1) state = (Math.imul(state, 1664525) + 1013904223) | 0;
                const line = document.createElement('li');
                line.textContent = `line ${state}`;
                return line;
            }));
            const behind = new MessageChannel();
            behind.port1.onmessage = () => { times.push(performance.now() - start); setTimeout(next, 30); };
            behind.port2.postMessage(0);
        });
    };
    next();
";
