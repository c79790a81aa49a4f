// Loads the app, keeps it for use without a network, and offers new versions.
//
// Events on `window`, and the same news on <html> for who comes later:
//   pitleaf-offline-ready        data-offline="ready"        everything is on this device
//   pitleaf-offline-unavailable  data-offline="unavailable"  this browser or address can't keep it
//   pitleaf-update-ready         data-update="ready"         a new version waits
//   pitleaf-language-unavailable data-language="unavailable" another language is not here and can't be fetched
// The app answers with `pitleaf-take-update` on `window`: the page then loads again as the new version.

// Languages in folders below this one.
const OTHERS = [{{others}}];

const sentence = (error) => typeof WebAssembly === "object"
  ? `{{say: Pitleaf could not start. Load the page again; if this stays, the reason to pass on is:}} ${error.message ?? error}`
  : "{{say: This browser can’t run Pitleaf, because it has no WebAssembly. A browser of the last few years that is kept up to date can.}}";

// Another language is another folder with an app of its own, over the same book.
const LANGUAGE = "pitleaf.language";
const remembered = () => {
  try {
    return localStorage.getItem(LANGUAGE);
  } catch {
    return null;
  }
};
const isKept = async (there) => {
  const names = await caches.keys();
  return names.some((name) => name.startsWith(`pitleaf ${new URL("./", there).pathname} `));
};
// A network that only seems to be there must not keep anyone from the book.
const isThere = async (there) => await isKept(there).catch(() => false)
  || await fetch(there, { signal: AbortSignal.timeout(3000) }).then((answer) => answer.ok, () => false);
const speak = async (link) => {
  const there = new URL(link.getAttribute("href"), location.href);
  if (!await isThere(there)) return tell("language", "unavailable");
  localStorage.setItem(LANGUAGE, link.hreflang);
  location.assign(there);
};
document.addEventListener("click", (event) => {
  const link = event.target.closest?.("a[hreflang]");
  if (!link) return;
  event.preventDefault();
  speak(link).catch(() => tell("language", "unavailable"));
});

const start = async () => {
  const there = new URL(`${remembered()}/${location.hash}`, location.href);
  if (OTHERS.includes(remembered()) && await isThere(there).catch(() => false)) {
    return location.replace(there);
  }
  // Without an integrity of its own, so that it is compiled while it arrives; its name is its hash.
  const { default: init } = await import("./{{script}}");
  await init({ module_or_path: "./{{wasm}}" });
};

const tell = (topic, state) => {
  if (document.documentElement.dataset[topic] === state) return;
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
  // The root's worker holds another language's page until that has its own.
  const own = new URL("service-worker.js", location.href).href;
  let controlled = workers.controller?.scriptURL === own;
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
    const offer = () => registration.waiting && registration.active && tell("update", "ready");
    const ready = () => registration.active && tell("offline", "ready");
    let worker = null;
    const watch = () => {
      if (worker === registration.installing) return;
      worker = registration.installing;
      worker?.addEventListener("statechange", (event) => {
        if (event.target.state === "redundant" && !registration.active) later();
        offer();
        ready();
      });
    };
    registration.addEventListener("updatefound", watch);
    watch();
    offer();
    ready();
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
};

// A fault inside the app is a trap: what it holds can no longer be trusted, but the book is on the disk.
const stop = (error) => {
  if (!(typeof WebAssembly === "object" && error instanceof WebAssembly.RuntimeError)) return;
  const words = document.createElement("p");
  words.textContent = "{{say: Pitleaf has met a fault of its own and stopped. What was written is in the book. Reload to go on.}}";
  const again = document.createElement("button");
  again.className = "button action";
  again.textContent = "{{say: Reload}}";
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
