"""Survey files with words of many languages: poles, levels, things beside the points, whole headers."""

from __future__ import annotations

from typing import Dict, Iterator, List

import numpy as np

from tests.core.file_shapes import N, Shape, by_line, decimals, hash_of, lines_of
from tests.core.file_shapes_asked import raised
from tests.core.file_shapes_exports import cells_of
from tests.core.file_shapes_found import EVERY, USUAL, made


def datum_words() -> Iterator[Shape]:
    """Heights with a sign, a unit, and a word for their datum in the cell."""
    forms = (
        "+{} NHN", "{} NHN", "{} m NHN", "+{} m ü. NHN", "{} müNN", "{} m ü.NN", "NAP +{}", "{} m NAP", "{} m AHD",
        "{} AOD", "{} NGF", "{} m NGF", "{} m s.n.m.", "{} msnm", "{} m DVR90", "{} (NHN)", "{}m ASL", "{} m.n.m.",
        "NHN {}", "{} NAVD88", "{} m amsl", "{} m ü. M.", "{} MSL", "{} m n.p.m.", "{} m n. m.", "{} RH2000",
        "{} N2000", "{} NN2000", "{} EVRF2007", "{} m o.h.", "{} TAW", "{} mTAW", "{} m.ü.A.", "+{}",
    )  # fmt: skip
    for i, form in enumerate(forms):
        sign = ";\t"[i % 2]
        truth, columns = cells_of(form + sign)
        columns[3] = [form.format(one) for one in columns[3]]
        yield made(f"datum word {form} {sign!r}", lines_of(columns, sign, USUAL), truth, 2, meant=EVERY)
    for form in ("+{} NHN", "{} m NHN", "{} NAP"):
        truth, columns = cells_of(form + "c")
        columns[3] = [form.format(one.replace(".", ",")) for one in columns[3]]
        plan = [[one.replace(".", ",") for one in column] for column in columns[1:3]]
        yield made(f"datum word comma {form}", lines_of([columns[0], *plan, *columns[3:]], ";", USUAL), truth, 2)


POLES = (
    "HR", "TH", "RH", "HI", "Hi", "AH", "ih", "ant", "Ant.", "Ant H", "Ant.H", "AntH", "Ant Ht", "h_ant", "hant",
    "ant_hgt", "antenna_h", "Antenna Ht", "Rod", "Rod Ht", "rod_height", "Pole", "pole_h", "Pole Ht", "PoleH",
    "Pole Hgt", "Target Ht", "Target h", "TgtHt", "Prism Ht", "Instr. height", "Rcvr Ht", "Staff height", "ARP height",
    "Height of antenna", "Height of pole", "H antenna", "H. ant.", "HtAnt", "HA", "APC height", "Rover height",
    "Stabhöhe", "Stab", "StabH", "Stab-H.", "Lotstock", "Lotstockhöhe", "Lotstabhöhe", "Reflektorhöhe", "Refl.höhe",
    "Zielhöhe", "Zielh.", "Antennenh.", "Ant.-Höhe", "Ant.höhe", "AntHöhe", "Antennenhoehe", "Instrumentenhöhe",
    "Tafelhöhe", "Höhe Antenne", "Höhe der Antenne", "Antenne",
    "Hauteur canne", "Ht canne", "H canne", "H. canne", "Hcanne", "Canne", "Hauteur de canne", "Hauteur antenne",
    "Haut. ant.", "Ht ant.", "Hauteur prisme", "Hauteur perche", "H. perche", "Hauteur de mire", "Hauteur cible",
    "H_ant",
    "Altura jalón", "Alt. jalón", "h jalón", "Jalón", "Jalon", "Altura bastón", "Bastón", "Altura antena",
    "Alt. antena", "Alt. ant.", "H antena", "Altura prisma", "Altura de la antena", "Altura de instrumento",
    "Altezza asta", "h asta", "Asta", "Palina", "Altezza palina", "Altezza antenna", "h antenna", "Alt. antenna",
    "Stokhoogte", "Antennehoogte", "Jalonhoogte", "Prismahoogte", "Altura do bastão", "Bastão", "Altura da antena",
    "Wysokość tyczki", "Wys. tyczki", "Tyczka", "Wysokość anteny", "Wys. anteny", "Výška antény", "Výška výtyčky",
    "Výtyčka", "Výška cíle", "Stånghöjd", "Stanghöjd", "Stång", "Antennhöjd", "Stanghøyde", "Antennehøyde",
    "Stanghøjde", "Stokkehøjde", "Antennehøjde", "Sauvan korkeus", "Antennin korkeus", "Sauvakorkeus",
    "Высота вехи", "Веха", "Высота антенны", "Antenna magasság", "Antennamagasság", "Rúd magasság", "Înălțime jalon",
    "Înălțime antenă", "Anten yüksekliği", "Jalon yüksekliği", "Visina antene", "Visina štapa", "Ύψος κεραίας",
    "アンテナ高", "天线高", "杆高", "안테나고",
)  # fmt: skip


def pole_words() -> Iterator[Shape]:
    """A column of the pole's or antenna's height in many words; heights are of the antenna."""
    for word in POLES:
        truth, columns = cells_of(word)
        pole = ["2.000"] * (N // 2) + ["1.800"] * (N - N // 2)
        up = np.array([float(one) for one in pole])
        text = lines_of([*columns[:3], decimals(truth.height + up), pole], ";", ["Pt", "E", "N", "Z", word])
        yield made(f"pole {word}", text, truth, 2, meant={"--heights-of": "antenna"})


def objects() -> Iterator[Shape]:
    """Columns that look like a height or a coordinate by their words: sizes of things, accuracies, corrections."""
    words = (
        "Tree height", "Height of tree", "Baumhöhe", "Höhe Baum", "Hauteur arbre", "Altura árbol", "Wall height",
        "Crown width", "Width", "Breite", "Largeur", "Länge", "Length", "Höhengenauigkeit", "Lagegenauigkeit",
        "Height accuracy", "Elevation accuracy", "Alt. précision", "Précision alti", "Precisión altura", "Height SD",
        "Vertical precision", "Height quality", "Höhe Std.", "Std H", "mH", "mL", "Height correction", "Geoid",
        "Height diff", "dH", "Design height difference", "Clearance", "Depth of cover", "Manhole depth",
        "Tiefe Schacht",
        "Distance", "Station", "Chainage", "Offset", "Epochs", "Ep.", "Alter", "Nb sat", "Sats", "Batt", "Temp",
        "Tilt angle", "Neigung", "Richtung", "Azimuth", "Speed", "Layer", "Colour", "Symbol", "Zone", "Blatt", "Nr.",
        "Höhe über Grund", "AGL", "Easting error", "Northing error", "E sigma", "RMS N", "Scale factor", "Convergence",
    )  # fmt: skip
    for i, word in enumerate(words):
        front = i % 2 == 0
        truth, columns = cells_of(word)
        size = [f"{0.4 + 0.017 * (hash_of(word + str(i)) % 40):.3f}" for i in range(N)]
        whole = [columns[0], size, *columns[1:]] if front else [*columns, size]
        head = [USUAL[0], word, *USUAL[1:]] if front else [*USUAL, word]
        meant = {"--heights-of": "ground", "--columns": "name=1,easting=3,northing=4,height=5,code=6"}
        yield made(f"beside {word} {front}", lines_of(whole, ",", head), truth, 2, meant=meant if front else _GROUND)


_GROUND = {**EVERY, "--heights-of": "ground"}


WORDS: Dict[str, List[str]] = {
    "es utm": ["PUNTO", "X_UTM", "Y_UTM", "COTA (msnm)", "DESC"],
    "es coord": ["Nº", "Coord. X (UTM)", "Coord. Y (UTM)", "Cota Z", "Descripción"],
    "es este x": ["Vértice", "ESTE (X)", "NORTE (Y)", "ELEVACION", "OBS"],
    "es ortho": ["id_punto", "coordenada_x", "coordenada_y", "altura_ortometrica", "codigo"],
    "fr abscisse": ["N°", "Abscisse", "Ordonnée", "Altitude (m NGF)", "Nature"],
    "fr x": ["Matricule", "X (m)", "Y (m)", "Z (m NGF)", "Commentaire"],
    "fr l93": ["Num", "X_L93", "Y_L93", "Z_NGF", "Type"],
    "de rw": ["PktNr", "RW", "HW", "H", "Kennung"],
    "de y": ["Punkt", "Y (Rechts)", "X (Hoch)", "Z (Höhe)", "Vermarkung"],
    "de utm": ["PNr", "East [UTM32]", "North [UTM32]", "Höhe [DHHN2016]", "Bem."],
    "de ost": ["Pkt", "Ost", "Nord", "Höhe ü. NHN", "Objekt"],
    "de koord": ["Punktkennzeichen", "E-Koordinate", "N-Koordinate", "H-Koordinate", "Text"],
    "it est": ["Nome", "Coord. Est", "Coord. Nord", "Quota slm", "Note"],
    "it s": ["Vertice", "EST", "NORD", "QUOTA ORTOMETRICA", "Codice"],
    "pt m": ["Vértice", "M (m)", "P (m)", "Cota (m)", "Obs."],
    "pt coord": ["Nome", "Coordenada E", "Coordenada N", "Altitude Ortométrica", "Código"],
    "nl rd": ["Nr", "X-coördinaat", "Y-coördinaat", "Hoogte NAP", "Omschr."],
    "no": ["Punkt", "Øst", "Nord", "Høyde NN2000", "Kode"],
    "da kote": ["Pkt", "E", "N", "Kote DVR90", "Tekst"],
    "sv n": ["Pnr", "E", "N", "H RH2000", "Kod"],
    "fi n": ["Pistenro", "E", "N", "Korkeus N2000", "Laji"],
    "pl": ["Nr", "Y (E)", "X (N)", "H", "Opis"],
    "cs jtsk": ["č.b.", "E", "N", "Výška Bpv", "Popis"],
    "sk": ["Číslo bodu", "Východ", "Sever", "Výška", "Popis"],
    "hu": ["Pontszám", "Kelet", "Észak", "Magasság", "Kód"],
    "ro": ["Nr. pct.", "Est", "Nord", "Cota", "Denumire"],
    "tr": ["Nokta No", "Sağa (Y)", "Yukarı (X)", "Kot (Z)", "Kod"],
    "el": ["Σημείο", "Ανατολή", "Βορράς", "Υψόμετρο", "Κωδικός"],
    "hr": ["Broj točke", "E", "N", "Visina", "Opis"],
    "sl": ["Št. točke", "E", "N", "Višina", "Koda"],
    "et": ["Punkt", "Ida", "Põhi", "Kõrgus", "Kood"],
    "lv": ["Punkts", "Austrumi", "Ziemeļi", "Augstums", "Kods"],
    "lt": ["Taškas", "Rytai", "Šiaurė", "Aukštis", "Kodas"],
    "uk": ["Точка", "Схід", "Північ", "Висота", "Код"],
    "bg": ["Точка", "Изток", "Север", "Кота", "Код"],
    "ja": ["点名", "東", "北", "標高", "コード"],
    "zh": ["点号", "东坐标", "北坐标", "高程", "编码"],
    "ko": ["점명", "동", "북", "표고", "코드"],
    "vi": ["Tên điểm", "Đông", "Bắc", "Cao độ", "Mã"],
    "id": ["Titik", "Timur", "Utara", "Elevasi", "Kode"],
    "ar": ["نقطة", "شرق", "شمال", "ارتفاع", "رمز"],
    "he": ["נקודה", "מזרח", "צפון", "גובה", "קוד"],
    "is": ["Punktur", "Austur", "Norður", "Hæð", "Kóði"],
    "en mga": ["Point ID", "MGA East", "MGA North", "AHD Height", "Feature"],
    "en osgb": ["Station", "OS East", "OS North", "AOD", "Feature Code"],
    "en us": ["PNT#", "EAST", "NORTH", "ELEV.", "DESCR."],
    "en upper": ["PTNO", "EASTING_M", "NORTHING_M", "ELEV_M", "FCODE"],
    "en dots": ["pt.id", "coord.east", "coord.north", "coord.up", "attr.code"],
    "en camel": ["pointName", "gridEasting", "gridNorthing", "orthoHeight", "featureCode"],
    "en snake": ["point_number", "proj_x", "proj_y", "proj_z", "feature_code"],
}


def words_of_heads() -> Iterator[Shape]:
    """Headers in more words; some of another order of columns."""
    for label, head in WORDS.items():
        for order in ((0, 2, 1, 3, 4), (4, 0, 1, 2, 3)):
            truth, columns = cells_of(label + str(order))
            text = lines_of([columns[i] for i in order], ";", [head[i] for i in order])
            roles = ("name", "easting", "northing", "height", "code")
            meant = {"--columns": ",".join(f"{roles[i]}={at + 1}" for at, i in enumerate(order))}
            yield made(f"exports head {label} {order}", text, truth, 2, codes=by_line(truth.codes, 2), meant=meant)


def antennas_in_words() -> Iterator[Shape]:
    """Sentences above the points about pole and antenna."""
    for line, of, up in (
        ("# Heights refer to the antenna phase centre, pole 2.000 m", "antenna", 2.0),
        ("# Heights reduced to ground", "ground", 0.0),
        ("# Pole height 2.000 m applied", "ground", 0.0),
        ("# Rod: 2.000 m (heights are of the rod's tip)", "ground", 0.0),
        ("# Stabhöhe 2,000 m berücksichtigt", "ground", 0.0),
        ("# Höhen: Antenne, Stabhöhe 2,000 m", "antenna", 2.0),
        ("# Altura de jalón 2.000 m", "antenna", 2.0),
        ("# Hauteur de canne : 2,000 m", "antenna", 2.0),
        ("# h.i. 2.000 m", "antenna", 2.0),
        ("# HI = 2.000", "antenna", 2.0),
        ("# Antenna: 2.000 m vertical", "antenna", 2.0),
        ("# Altezza asta 2.000 m", "antenna", 2.0),
        ("# Wysokość tyczki 2.000 m", "antenna", 2.0),
        ("# Stanghöjd 2,000 m", "antenna", 2.0),
    ):
        truth, columns = cells_of(line)
        text = line + "\n" + lines_of([*columns[:3], raised(truth, up), columns[4]], ",", USUAL)
        yield made(f"sentence {line}", text, truth, 3, meant={"--heights-of": of})


def every_of_words() -> List[Shape]:
    """All families but the poles, of which each asks."""
    families = (datum_words, objects, words_of_heads, antennas_in_words)
    return [shape for family in families for shape in family()]
