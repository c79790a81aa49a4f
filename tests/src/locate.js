// arguments: role, name, whether the name only starts so. Gives every element on the page that can be
// seen and is called so. Names by the rules that this app's markup needs; the driver's own computed
// role and name are compared with them before anything is touched.
const [role, name, isStart] = arguments;
const SELECTORS = {
  alert: "[role=alert]",
  button: "button:not([role]), [role=button]",
  combobox: "select",
  group: "[role=group], fieldset",
  heading: "h1, h2, h3",
  image: "[role=img], img",
  link: "a[href]",
  list: "ul, ol",
  searchbox: "input[type=search]",
  status: "[role=status]",
  table: "table",
  textbox: "input:not([type]), input[type=text], textarea",
};
const words = (text) => (text ?? "").replace(/\s+/g, " ").trim();
const called = (element) => {
  const label = element.getAttribute("aria-label");
  if (label) return words(label);
  const by = element.getAttribute("aria-labelledby");
  if (by) return words(by.split(/\s+/).map((id) => document.getElementById(id)?.textContent).join(" "));
  if (element.labels?.length) {
    return words(Array.from(element.labels, (one) => {
      const copy = one.cloneNode(true);
      copy.querySelectorAll("input, select, textarea").forEach((field) => field.remove());
      return copy.textContent;
    }).join(" "));
  }
  if (/^(A|BUTTON|H1|H2|H3)$/.test(element.tagName)) {
    const copy = element.cloneNode(true);
    copy.querySelectorAll("[aria-hidden=true]").forEach((hidden) => hidden.remove());
    return words(Array.from(copy.childNodes, (node) => node.textContent).join(" "));
  }
  if (element.caption) return words(element.caption.textContent);
  return words(element.getAttribute("title"));
};
return Array.from(document.querySelectorAll(SELECTORS[role])).filter((element) => {
  const own = called(element);
  return (isStart ? own.startsWith(words(name)) : own === words(name)) && element.checkVisibility();
});
