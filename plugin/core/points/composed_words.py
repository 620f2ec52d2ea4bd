"""Header words put together from a quantity and what it is of, such as "Hz Prec", "Lage-Gen." or "Rod hgt"."""

from __future__ import annotations

import re
from typing import Sequence

from .vocabulary import each


def _any(words: str) -> str:
    return "|".join(sorted(each(words), key=len, reverse=True))


_PRECISION = _any("""prec precis precision accuracy acc sigma std stdev stddev sdev sd rms rmse err error cep unc
    uncertainty quality cq""")
_GERMAN_PRECISION = _any("""genauigkeit genauigk genau gen stdabw standardabweichung mittlererfehler prazision prec
    sigma std ecarttype precision exactitude exactitud desviacion desv""")
_FLAT = _any("""hz hor horz horiz horizontal horizontale horizontally 2d xy pos position positional plan plani
    planimetric planimetrique planimetrica""")
_UP = _any("vt ver vert vertical verticale vertically 1d height hgt elev elevation alti altimetrique altimetrica")
_LAGE, _HOEHE = _any("lage lagen plan plani horizontale"), _any("hohe hohen hoehe hoehen verticale alti")
_POLE = _any("""pole poles rod rods staff antenna antenne antennen antennas antena antene anteny anten ant target tgt
    prism prisme prisma reflector reflektor reflekt refl canne jalon baston bastao bastone palina asta stab lotstab
    lotstock latte latten ziel zieltafel tafel cible mire perche mat stok stokk stokke stang stangen tyczki tyczka
    vytycky vytycka cile tyce stapa letve rud rudas instrument instrumenten instrumento instr inst rover receiver rcvr
    empfanger recepteur receptor sauvan sauva antennin antenni antenn tahyksen
    вехи веха антенны вешки κεραιασ""")
_LONG = _any("""height heights hgt hght ht h length len hohe hohen hoehe lange laenge hoogte hojd hojde hoyde korkeus
    magassag yuksekligi yukseklik""")
_HIGH = _any("""height ht hgt h hauteur haut longueur altura alt altezza longitud lunghezza hohe hoehe hoogte wysokosc
    wys vyska vys visina inaltime inaltimea korkeus υψοσ высота""")
_OF = _any("of the de du la le l del d da do della dell der des van och")
_OF_POLE = re.compile(rf"(?:{_POLE})+(?:{_LONG})|(?:{_HIGH})(?:{_OF}){{0,2}}(?:{_POLE})")
#: Words that stand for the pole's height where the values are such, and for other things else; of scripts without
#: blanks those that say it.
_SHORT_POLE = re.compile(
    rf"hr|th|rh|ah|hi|ih|ha|hp|hv|i|zh|ph|(?:{_POLE})|jalons?|bastons?|"
    r"アンテナ高|天线高|杆高|仪器高|棱镜高|안테나고|폴높이|ポール高|機械高|器械高"
)
_SIGMAS = (
    ("sigma_h", re.compile(rf"(?:{_FLAT}|h)(?:{_PRECISION})|(?:{_PRECISION})(?:{_FLAT})")),
    ("sigma_v", re.compile(rf"(?:{_UP}|v|z)(?:{_PRECISION})|(?:{_PRECISION})(?:{_UP})")),
    ("sigma_h", re.compile(rf"(?:{_LAGE})(?:{_GERMAN_PRECISION})|(?:{_GERMAN_PRECISION})(?:{_LAGE})")),
    ("sigma_v", re.compile(rf"(?:{_HOEHE})(?:{_GERMAN_PRECISION})|(?:{_GERMAN_PRECISION})(?:{_HOEHE})")),
)
#: A deviation of one axis, such as sE or "std north": sure where the axis is a word, else only beside the other axis.
_AXES = (
    ("sigma_e", r"e|x|east|easting|ost", r"e|x"),
    ("sigma_n", r"n|y|north|northing|nord", r"n|y"),
    ("sigma_u", r"u|h|z|up", r"u|h|z"),
)


def composed_role(tokens: Sequence[str]) -> str:
    """The role that folded words name together, "" for none."""
    if len(tokens) > 4:
        return ""
    joined = "".join(tokens)
    if _OF_POLE.fullmatch(joined):
        return "pole_height"
    return next((role for role, pattern in _SIGMAS if pattern.fullmatch(joined)), "")


def sigma_of_axis(tokens: Sequence[str]) -> str:
    """sigma_e, sigma_n or sigma_u where words may be a deviation along one axis, "" for none."""
    joined = "".join(tokens) if len(tokens) < 3 else ""
    for role, names, letters in _AXES:
        if re.fullmatch(rf"(?:s|sd|std|stdev|sigma|rms)(?:{letters})|(?:{letters})(?:std|sigma|rms|sd)", joined):
            return role
        if len(tokens) == 2 and re.fullmatch(
            rf"(?:{_PRECISION}) (?:{names})|(?:{names}) (?:{_PRECISION})", " ".join(tokens)
        ):
            return role
    return ""


def may_be_pole(tokens: Sequence[str]) -> bool:
    """Whether folded words are a short form of the pole's height, which may stand for something else too."""
    return _SHORT_POLE.fullmatch("".join(tokens)) is not None
