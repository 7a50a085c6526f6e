// Shows a plain page when the front end has crashed, because after a panic nothing else responds.
// Everything recorded is in the shell's store, so opening the window again is safe.
(function () {
  // The part of the page in the window's language, in the system's if the window's is not known yet, or in English.
  function part() {
    var page = document.documentElement.lang;
    var shown = document.querySelector("main") ? page : window.systemLanguage || page;
    return [shown, shown.split("-")[0], "en"]
      .map(function (tag) { return document.querySelector('#broken > [lang="' + tag + '"]'); })
      .find(Boolean);
  }
  function stopped() {
    var shown = part();
    document.querySelectorAll("#broken > [lang]").forEach(function (one) { one.hidden = one !== shown; });
    document.getElementById("broken").hidden = false;
  }
  // `text` is called with the part of the page, which contains the texts.
  function note(text, ends) {
    function show() {
      document.getElementById("faults").append(text(part().dataset) + "\n");
      if (ends) stopped();
    }
    if (document.getElementById("faults")) show();
    else document.addEventListener("DOMContentLoaded", show);
  }
  window.addEventListener("error", function (event) {
    var failed = event.target && event.target !== window && (event.target.src || event.target.href);
    note(function (words) { return failed ? words.couldNotLoad.replace("{address}", failed) : String(event.message); }, true);
  }, true);
  window.addEventListener("unhandledrejection", function (event) {
    note(function () { return String(event.reason); }, true);
  });
  // Something was blocked by the page's content policy; the page itself continues.
  document.addEventListener("securitypolicyviolation", function (event) {
    note(function (words) {
      return words.refused.replace("{rule}", event.effectiveDirective).replace("{address}", event.blockedURI);
    }, false);
  });
})();
