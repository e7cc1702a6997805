// One large button to play a clip, in place of the browser's own small controls. Without this script those stay.
"use strict";

(function () {
  let playing = null;

  function stop() {
    if (playing) {
      playing.audio.pause();
      playing.show(false);
      playing = null;
    }
  }

  document.querySelectorAll(".sound").forEach(function (place) {
    const audio = place.querySelector("audio");
    const button = document.createElement("button");
    const words = place.dataset.name + " (" + place.dataset.seconds + " s)";
    const clip = {
      audio: audio,
      show: function (on) {
        button.textContent = (on ? "■ Stop: " : "▶ ") + words;
      },
    };
    button.type = "button";
    clip.show(false);
    button.addEventListener("click", function () {
      const again = playing === clip;
      stop();
      if (again) {
        return;
      }
      playing = clip;
      clip.show(true);
      audio.currentTime = 0;
      audio.play().catch(function () {
        if (playing === clip) {
          playing = null;
          button.textContent = "The sound cannot be played.";
        }
      });
    });
    audio.addEventListener("ended", stop);
    audio.removeAttribute("controls");
    audio.hidden = true;
    place.appendChild(button);
  });
})();
