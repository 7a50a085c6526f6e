// Shows a plain page when the window's program has stopped, since after a panic nothing else would
// answer. Everything recorded is in the shell's store, so opening the window again is safe.
(function () {
  function note(text, stopped) {
    function show() {
      document.getElementById("faults").append(text + "\n");
      if (stopped) document.getElementById("broken").hidden = false;
    }
    if (document.getElementById("faults")) show();
    else document.addEventListener("DOMContentLoaded", show);
  }
  window.addEventListener("error", function (event) {
    var failed = event.target && event.target !== window && (event.target.src || event.target.href);
    note(failed ? "could not load " + failed : String(event.message), true);
  }, true);
  window.addEventListener("unhandledrejection", function (event) { note(String(event.reason), true); });
  // Something tried what the page's policy forbids. It was stopped; the page itself goes on.
  document.addEventListener("securitypolicyviolation", function (event) {
    note("refused by " + event.effectiveDirective + ": " + event.blockedURI, false);
  });
})();
