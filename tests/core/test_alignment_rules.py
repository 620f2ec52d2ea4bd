"""Tables of limits and of least K: read, written, shipped, and every fault told with its line."""

from dataclasses import replace

import pytest

from plugin.core.alignment.rules import (
    Quantity,
    default_rules,
    read_least_k,
    read_ratio,
    read_rules,
    write_rules,
)
from plugin.core.messages import SurveyError

HEAD = "rule,quantity,at_least,at_most,window,applies,source\n"


def rules_of(tmp_path, text):
    path = tmp_path / "rules.csv"
    path.write_bytes(text.encode("utf-8") if isinstance(text, str) else text)
    return read_rules(path)


def test_the_shipped_rules_and_their_sources():
    """Values: U.S. DOJ, 2010 ADA Standards, 403.3, 405.2, 405.3 (from memory); U.S. Access Board, Summary of
    Accessibility Standards for Federal Outdoor Developed Areas, 1016.7.1 and 1016.7.2 (read)."""
    rules = default_rules()
    assert all(rule.source and rule.checked in ("read", "from memory") for rule in rules)
    limits = {rule.source.rsplit(",", 1)[1].strip() + " " + rule.quantity.value: rule.limit for rule in rules}
    assert limits["403.3 grade"] == pytest.approx(0.05)
    assert limits["403.3 crossfall"] == pytest.approx(1 / 48)
    assert limits["405.2 grade"] == pytest.approx(1 / 12)
    assert limits["1016.7.1 grade"] == pytest.approx(0.05)
    assert limits["1016.7.2 crossfall"] == pytest.approx(1 / 48)
    ramp = next(rule for rule in rules if "405.2" in rule.source)
    assert (ramp.condition.above, ramp.condition.limit) == (True, pytest.approx(0.05))
    assert not any(rule.at_least for rule in rules)


def test_written_rules_come_back(tmp_path):
    rules = (*default_rules(), replace(default_rules()[0], name='Pipe, "old"', at_least=True, limit=0.005,
                                       limit_text="0.5%", window=2.5, quantity=Quantity.CREST_K))  # fmt: skip
    write_rules(rules, tmp_path / "mine.csv")
    assert read_rules(tmp_path / "mine.csv") == rules
    first = (tmp_path / "mine.csv").read_bytes()
    write_rules(read_rules(tmp_path / "mine.csv"), tmp_path / "mine.csv")
    assert (tmp_path / "mine.csv").read_bytes() == first


@pytest.mark.parametrize(
    ("text", "value"),
    [("1:20", 0.05), ("1 : 48", 1 / 48), ("5%", 0.05), ("2.5 %", 0.025), ("0.05", 0.05), ("0", 0.0), ("1:0", None),
     ("-1:20", None), ("-5%", None), ("steep", None), ("", None), ("nan", None), ("1:2:3", None), ("..:1", None)],
)  # fmt: skip
def test_how_ratios_are_written(text, value):
    assert read_ratio(text) == (None if value is None else pytest.approx(value))


def test_semicolons_byte_order_mark_and_order_of_columns(tmp_path):
    text = "\ufeff# ours\nsource;at_most;at_least;quantity;rule\n\nThe town;;0.5%;Grade;Gutter\n"
    (rule,) = rules_of(tmp_path, text)
    assert (rule.name, rule.limit, rule.at_least, rule.window, rule.condition) == ("Gutter", 0.005, True, 5.0, None)


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("", "has no rows"),
        (HEAD, "has no rows"),
        ("rule,quantity,at_most,source\nA,grade,1:20,X\n", "line 1: column at_least is missing"),
        (HEAD.replace("window", "windw") + "A,grade,,1:20,5,,X\n", "line 1: column windw is unknown or twice"),
        (HEAD.replace("window", "rule") + "A,grade,,1:20,5,,X\n", "line 1: column rule is unknown or twice"),
        (HEAD + "A,grade,,1:20,5,,X,more\n", "line 2: more cells"),
        (HEAD + ",grade,,1:20,5,,X\n", "line 2: rule is empty"),
        (HEAD + "A,grade,,1:20,5,,X\n# c\na,grade,,1:12,5,,X\n", "line 4: a already stands in line 2"),
        (HEAD + "A,slope,,1:20,5,,X\n", "line 2: quantity slope is unknown. Use one of grade, crossfall"),
        (HEAD + "A,grade,1:50,1:20,5,,X\n", "line 2: give either at_least or at_most"),
        (HEAD + "A,grade,,,5,,X\n", "line 2: give either at_least or at_most"),
        (HEAD + "A,grade,,flat,5,,X\n", "line 2: at_most is flat. Write a ratio"),
        (HEAD + "A,grade,-2%,,5,,X\n", "line 2: at_least is -2%"),
        (HEAD + "A,grade,,1:20,0,,X\n", "line 2: window is 0"),
        (HEAD + "A,grade,,1:20,wide,,X\n", "line 2: window is wide"),
        (HEAD + "A,grade,,1:20,5,downhill,X\n", "line 2: applies is downhill"),
        (HEAD + "A,grade,,1:20,5,grade > steep,X\n", "line 2: applies is grade > steep"),
        (HEAD + "A,grade,,1:20,5,,\n", "line 2: source is empty"),
        (b"rule,quantity\0", "line 1: this is not a text table"),
    ],
)
def test_faults_are_told_with_their_line(tmp_path, text, said):
    with pytest.raises(SurveyError) as caught:
        rules_of(tmp_path, text)
    assert said in str(caught.value)
    assert "rules.csv" in str(caught.value)
    assert "\n" not in str(caught.value)


def test_missing_file(tmp_path):
    with pytest.raises(SurveyError, match=r"none\.csv: the table of limits cannot be read"):
        read_rules(tmp_path / "none.csv")
    with pytest.raises(SurveyError, match="cannot be read"):
        read_rules(tmp_path)


def test_table_of_least_k(tmp_path):
    path = tmp_path / "k.csv"
    path.write_text("speed,least_k\n50,7\n30,2\n", encoding="utf-8")
    assert [(row.speed, row.least_k) for row in read_least_k(path)] == [(30, 2), (50, 7)]
    for bad in ("50,fast", "50,0", "50,"):
        path.write_text(f"speed,least_k\n30,2\n{bad}\n", encoding="utf-8")
        with pytest.raises(SurveyError, match="line 3: least_k is"):
            read_least_k(path)
