// The QR code's address carries the access code behind its number sign: filled in here, it is only for this page to see.
const field = document.getElementById('code') as HTMLInputElement | null;
const code = decodeURIComponent(location.hash.slice(1));
if (field && code) {
    field.value = code;
    history.replaceState(null, '', location.pathname);
}
