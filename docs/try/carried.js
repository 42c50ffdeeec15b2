// A link that carries an installation is not to show another one first.
if (location.hash !== "") document.documentElement.classList.add("is-carried");
