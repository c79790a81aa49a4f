// Loads the app, keeps it for use without a network, and offers new versions.
//
// Events on `window`, and the same news on <html> for who comes later:
//   pitleaf-offline-ready        data-offline="ready"        everything is on this device
//   pitleaf-offline-unavailable  data-offline="unavailable"  this browser or address can't keep it
//   pitleaf-update-ready         data-update="ready"         a new version waits
// The app answers with `pitleaf-take-update` on `window`: the page then loads again as the new version.

const sentence = (error) => typeof WebAssembly === "object"
  ? `Pitleaf could not start. Load the page again; if this stays, the reason to pass on is: ${error.message ?? error}`
  : "This browser can't run Pitleaf, because it has no WebAssembly. A browser of the last few years that is kept up to date can.";

const start = async () => {
  // Without an integrity of its own, so that it is compiled while it arrives; its name is its hash.
  const { default: init } = await import("./{{script}}");
  await init({ module_or_path: "./{{wasm}}" });
};

const tell = (topic, state) => {
  document.documentElement.dataset[topic] = state;
  window.dispatchEvent(new CustomEvent(`pitleaf-${topic}-${state}`));
};

const keep = async () => {
  const workers = navigator.serviceWorker;
  if (!workers) {
    // Not plain http on anything but localhost, nor some private windows.
    tell("offline", "unavailable");
    return;
  }
  let asked = false;
  let controlled = Boolean(workers.controller);
  workers.addEventListener("controllerchange", () => {
    // The first worker takes a page that is already its own version: nothing to load again.
    if (!controlled) {
      controlled = true;
      return;
    }
    const again = () => window.location.reload();
    // Another tab took the update: this one follows when nobody is looking at it.
    if (asked || document.hidden) again();
    else document.addEventListener("visibilitychange", again, { once: true });
  });

  // One file that does not arrive fails the whole first installation: tried again, ever more rarely,
  // as long as the page is open.
  const install = async (pause) => {
    const later = () => setTimeout(() => install(2 * pause).catch(later), pause);
    const registration = await workers.register("service-worker.js", { updateViaCache: "none" });
    const offer = () => registration.waiting && workers.controller && tell("update", "ready");
    let worker = null;
    const watch = () => {
      if (worker === registration.installing) return;
      worker = registration.installing;
      worker?.addEventListener("statechange", (event) => {
        if (event.target.state === "redundant" && !registration.active) later();
        offer();
      });
    };
    registration.addEventListener("updatefound", watch);
    watch();
    offer();
    current = registration;
  };
  let current;
  await install(2000);
  window.addEventListener("pitleaf-take-update", () => {
    asked = true;
    current.waiting?.postMessage({ take: true });
  });
  // A phone's page lives for days: look for a new version when it comes back to the front.
  document.addEventListener("visibilitychange", () => {
    if (!document.hidden) current.update().catch(() => {});
  });
  await workers.ready;
  tell("offline", "ready");
};

// A fault inside the app is a trap: what it holds can no longer be trusted, but the book is on the disk.
const stop = (error) => {
  if (!(typeof WebAssembly === "object" && error instanceof WebAssembly.RuntimeError)) return;
  const words = document.createElement("p");
  words.textContent = "Pitleaf has met a fault of its own and stopped. What was written is in the book. Reload to go on.";
  const again = document.createElement("button");
  again.className = "button action";
  again.textContent = "Reload";
  again.addEventListener("click", () => window.location.reload());
  const place = document.createElement("div");
  place.className = "page";
  place.setAttribute("role", "alert");
  place.append(words, again);
  document.body.replaceChildren(place);
};
window.addEventListener("error", (event) => stop(event.error));
window.addEventListener("unhandledrejection", (event) => stop(event.reason));

start().catch((error) => {
  console.error(error);
  const place = document.querySelector("#start [role=status]") ?? document.body.appendChild(document.createElement("p"));
  place.textContent = sentence(error);
});
// Also after a failed start: the next version may be the cure.
keep().catch((error) => {
  console.warn(error);
  tell("offline", "unavailable");
});
