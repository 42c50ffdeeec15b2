"""Confirms or refutes every step of schedules of conductors from the tables alone. Shares no code with the library.

usage: verify.py TABLES [FILE ...]   each file, or standard input, holds one schedule or a list of them
       verify.py --stream TABLES     one schedule a line on standard input
Prints a line for each refuted step: title, conductor, reason. Exit status 1 if there is any.
"""
import csv, json, os, sys
from decimal import Decimal
from itertools import zip_longest
LEVELS = ["memory", "carried", "bracketed", "single", "confirmed"]
RATED, SILENT = ["equipment-grounding-conductor", "equipment-bonding-jumper"], ["sum", "assumed", "shared", "standard-size"]
# Sizes that stand in a sentence, not in the table of named sizes; roles of which the sets of policies are named by what they bond.
FIXED = {"parallel-minimum": "1/0 AWG", "tray-single-conductor": "4 AWG"}
STEMS = {"water-piping-bonding-jumper": "water-piping", "structural-metal-bonding-jumper": "structural-metal"}

def column(material): return "copper" if material == "copper" else "aluminum"
def up(a, b, c): return -(-a * b // c)
def weakest(levels): return min(levels, key=LEVELS.index, default="confirmed")
def cite(pair): return {"section": pair[0], "evidence": pair[1]}
def step(kind, at, **fields): return {"kind": kind, **fields, "citation": at if isinstance(at, dict) else cite(at)}
def phases(a_set): return a_set["phases"] if "phases" in a_set else [a_set]
def conductors(supply): return [one for a_set in supply["sets"] for one in phases(a_set) if one]
def column_of(supply): return {(0,): "aluminum", (1,): "copper"}.get((*{column(c["material"]) == "copper" for c in conductors(supply)},), "mixed")

def total(supply, rule, area):
    """The sum that a rule names: of one phase through all sets, of each set's largest conductor, or the largest alone."""
    if rule == "largest-conductor": return max(area(one) for one in conductors(supply))
    if rule == "largest": return sum(s["count"] * max(area(one) if one else 0 for one in phases(s)) for s in supply["sets"])
    at = lambda s, phase: s if "phases" not in s else (phases(s) + [None] * 3)[phase]
    return max(sum(s["count"] * area(at(s, phase)) for s in supply["sets"] if at(s, phase)) for phase in range(3))

class Edition:
    """The tables as one edition has them, under the chosen readings."""
    def __init__(self, folder, year, chosen):
        load = lambda name: json.load(open(os.path.join(folder, name + ".json"), encoding="utf-8"))
        rows = lambda name: [r for r in csv.DictReader(open(os.path.join(folder, "csv", name + ".csv"), encoding="utf-8")) if r["edition"] == year]
        self.year, self.chosen, self.tables, places, evidence = year, chosen, {}, {}, rows("evidence")
        for name in ("conductor-properties", "electrode-conductor", "bonding-conductor", "equipment-grounding", "raceway-ampacity"):
            table = load(name)
            blocks = [[]] + [block["rows"] for block in table["blocks"] if block["from"] <= year]
            cells = {f"{blocks[-1][int(e['row']) - 1][0] if e['row'] else ''} {e['column']}": e["level"] for e in evidence if e["table"] == name}
            self.tables[name] = {"rows": blocks[-1], "number": table["number"][year], "cells": cells, "level": cells.get(" ")}
        self.area = {size: area for size, area, _ in self.tables["conductor-properties"]["rows"]}
        self.standard = [size for size, _, standard in self.tables["conductor-properties"]["rows"] if standard]
        pair = lambda row: (row["section"], row["level"])
        self.named = {r["name"]: {**r, "citation": pair(r)} for r in rows("named-sizes")}
        self.sections = {r["topic"]: cite(pair(r)) for r in rows("sections")}
        self.known = list(self.sections.values()) + [cite(v["citation"]) for v in self.named.values()]
        self.roles = {r["role"]: r for r in rows("roles")}  # and the readings that change a policy; others act through electrodes
        self.readings = [r for r in load("readings")["readings"] if any(a.get("policy") for a in r["alternatives"])]
        for r in rows("policy-basis"): places.setdefault(r["policy"], {})[r["part"]] = pair(r)
        limit = lambda r, name, at: {"copper": r[name + "Copper"], "aluminum": r[name + "Aluminum"], "citation": at[name]} if name in at else None
        self.policies = {r["policy"]: {**{k: {"true": True, "false": False}.get(v, v) for k, v in r.items()}, "floor": limit(r, "floor", at), "ceiling": limit(r, "ceiling", at),
                                       "basis": at} for file in ("policies", "rating-policies") for r in rows(file) for at in [places[r["policy"]]]}
    def policy(self, name, changed={}):
        policy, chosen = dict(self.policies[name]), {**self.chosen, **changed}
        for r in self.open(name):
            policy.update(next(a for a in r["alternatives"] if a["id"] == chosen.get(r["id"], r["default"])).get("policy", {}))
        return policy
    def open(self, name): return [r for r in self.readings if name in r["policies"] and self.year in r["editions"]]
    def cell(self, table, row, col):
        number, cells, level = (self.tables[table][key] for key in ("number", "cells", "level"))
        return {"section": number, "evidence": cells.get(f"{row} {col}", level)}
    def ampacity(self, size, metal, degrees):
        place = (0 if metal == "copper" else 3) + [60, 75, 90].index(degrees) + 1
        return next((row[place] for row in self.tables["raceway-ampacity"]["rows"] if row[0] == size), None)
    def carrying(self, amperes, metal, degrees):
        return next((s for s in self.standard if (self.ampacity(s, metal, degrees) or 0) >= amperes), None)

    def assumed(self, one, read, degrees):
        """What stands in for a conductor; a size that the table leaves out counts as the next larger it has."""
        metal, own = column(one["material"]), self.area[one["size"]]
        larger = [one["size"]] + [s for s in self.standard if self.area[s] > own]
        counted, amperes = next((s, a) for s, a in ((s, self.ampacity(s, metal, degrees)) for s in larger) if a is not None)
        size = self.carrying(amperes, read, degrees)
        decided = [s for s in self.standard if size and self.area[s] <= self.area[size]][-2:]
        places = [self.cell("raceway-ampacity", s, f"{m}{degrees}") for s, m in [(counted, metal)] + [(s, read) for s in decided]]
        area, at = self.area[size] if size else up(own, 100, 61), {**places[0], "evidence": weakest([p["evidence"] for p in places])}
        return {"installed": one, "installedAmperes": amperes, "assumed": size, "area": area, "citation": at}

    def by_supply(self, policy, supply, material, degrees):
        """The steps that a policy makes of a supply, with the limits that it sets itself."""
        read, table, rule, basis = column(material), self.tables[policy["table"]]["rows"], policy["otherMaterial"], policy["basis"]
        own, cell = lambda one: self.area[one["size"]], {"copper": 2, "aluminum": 3}[read]
        bounded, last = [row for row in table if row[0]], next((row for row in table if not row[0] and row[2]), None)
        limit = lambda name: self.area.get(name) or int(name.split()[0]) * 1000
        through = lambda row, metal: limit(row[0 if metal == "copper" else 1])
        above = lambda metal, area: area > through(bounded[-1], metal)
        summed = lambda metal, area: step("sum", basis["sum"], rule=policy["sum"], supply=supply, column=metal, area=area)
        metal, area = column_of(supply), total(supply, policy["sum"], own)
        def replaced(metal, area):
            """Whether installed conductors are replaced by assumed ones: "no", "yes" or "both"."""
            single = rule == "parallel-above-threshold" and sum(s["count"] for s in supply["sets"]) == 1
            spared = metal != "mixed" and (rule == "never" or single or rule != "always" and not above(metal, area))
            if metal == read or spared: return "no"
            return "both" if rule == "larger-of-both" else "yes"
        def decide(metal, area):
            row = next((row for row in bounded if area <= through(row, metal)), last)
            end, known = through(row if row in bounded else bounded[-1], metal), {"entered": metal, "area": area}
            if row is None or (row is last and policy["oneEighth"]):
                return step("one-eighth", basis["oneEighth"], **known, threshold=end, requiredArea=up(area, 1, 8))
            known.update(over=max((at for at in (through(one, metal) for one in bounded) if at < area), default=None), through=None if row is last else end)
            return step("row", basis["row"], **known, read=read, size=row[cell], requiredArea=self.area[row[cell]])
        entered = read if metal == "mixed" else metal
        ways, ends = [[decide(entered, area)]] if replaced(metal, area) != "yes" else [], [(entered, area)]
        if replaced(metal, area) != "no":
            key, alike = lambda one: (one["size"], column(one["material"])), {}
            for one in [one for one in conductors(supply) if column(one["material"]) != read]:
                alike.setdefault(key(one), self.assumed({k: one[k] for k in ("size", "material")}, read, degrees))
            counted = total(supply, policy["sum"], lambda one: alike[key(one)]["area"] if key(one) in alike else own(one))
            ends = ends if metal != "mixed" else [(read, counted)]
            ways.append([step("assumed", basis["otherMaterial"], temperature=degrees, conductors=list(alike.values()), area=counted), decide(read, counted)])
        for part in ("copper", "aluminum") if metal == "mixed" else ():
            alone = total(supply, policy["sum"], lambda one: own(one) if column(one["material"]) == part else 0)
            ends += [(part, alone)]
            if replaced(part, alone) != "yes": ways.append([summed(part, alone), decide(part, alone)])
        best = max(ways, key=lambda way: way[-1]["requiredArea"])
        most = {"set": area, "conductor": max(map(own, conductors(supply)))}.get(policy["cap"])
        caps = [("ungrounded-conductors", most, basis["cap"])] if most and metal == read else []
        caps += [("largest-size", self.area[at[read]], at["citation"]) for at in [policy["ceiling"]] if at]
        floors = [("last-row", last[cell], basis["row"])] if policy["lastRowFloor"] and last and any(above(*end) for end in ends) else []
        floors += [("least-size", at[read], at["citation"]) for at in [policy["floor"]] if at]
        return ([summed(metal, area)] + [one for way in ways if way is best or way[0]["kind"] != "sum" for one in way]
                + [step("cap", at, why=why, requiredArea=most) for why, most, at in caps if most < best[-1]["requiredArea"]]
                + [step("floor", at, why=why, size=size, requiredArea=self.area[size]) for why, size, at in floors])
    def rating_row(self, amperes, read):
        end, *sizes = next(row for row in self.tables["equipment-grounding"]["rows"] if amperes <= row[0])
        size, at = sizes[0 if read == "copper" else 1], self.cell("equipment-grounding", end, read)
        return step("rating-row", at, amperes=amperes, through=end, read=read, size=size, requiredArea=self.area[size])

    def by_rating(self, policy, result):
        """The steps that a policy makes of a rating; the steps themselves tell what is installed and what the baseline is."""
        told, read, basis = {one["kind"]: one for one in result["steps"]}, column(result["material"]), policy["basis"]
        steps, tap = [self.rating_row(told["rating-row"]["amperes"], read)], self.sections["equipment-grounding-feeder-tap"]
        if "sum" not in told: return steps
        supply, at, own = told["sum"]["supply"], basis["increase"], lambda one: self.area[one["size"]]
        area, least, metal = total(supply, "corresponding", own), steps[0]["requiredArea"], column_of(supply)
        for base in [told["increase"]["baselineArea"]] if "increase" in told else []:
            grown = up(least, area, base) if area > base else 0
            steps.append(step("increase", at, area=least, installedArea=area, baselineArea=base, requiredArea=grown))
        cap = area if policy["cap"] == "set" else max(map(own, conductors(supply)))
        if policy["cap"] != "none" and metal == read and cap < steps[-1]["requiredArea"]:
            at = tap if result["citation"] == tap == told.get("cap", {}).get("citation") else basis["cap"]
            steps.append(step("cap", at, why="circuit-conductors", requiredArea=cap))
        return [step("sum", at, rule="corresponding", supply=supply, column=metal, area=area)] + steps

    def stands(self, one, read):
        """Whether a step that no policy makes has the numbers that the place which it cites names."""
        kind, at, size, area = one["kind"], one["citation"], one.get("size"), one.get("requiredArea")
        if kind == "rating-row": return one == self.rating_row(one["amperes"], read)
        if kind == "load":
            cell, sections = self.cell("raceway-ampacity", size, f"{read}{one['temperature']}"), at["section"].split(", ")
            fits = size == self.carrying(one["amperes"], read, one["temperature"]) and area == self.area[size]
            known = [*sections[:-1], cell["section"]] == sections and {*sections[:-1]} <= {one["section"] for one in self.known}
            return fits and known and at["evidence"] == weakest([one["evidence"] for one in [cell, *self.known] if one is cell or one["section"] in sections[:-1]])
        named = [v[read] or v["copper"] for v in self.named.values() if cite(v["citation"]) == at]
        sizes = named + [FIXED[topic] for topic in FIXED if self.sections[topic] == at]
        fits = area in [self.area[name] for name in sizes] if sizes else kind == "cap" or size in self.area
        return at in self.known and fits and (size is None or self.area.get(size) == area)

def compared(expected, actual):
    """The first difference of two lists of steps; nothing if they are alike."""
    for one, other in zip_longest(expected, actual):
        if one is None or other is None: return f"step {(one or other)['kind']} is {'missing' if one else 'not to be there'}"
        for key in sorted(one.keys() | other.keys()):
            if one.get(key) != other.get(key): return f"step {other['kind']}: {key} is {other.get(key)}, not {one.get(key)}"
def limited(steps):
    """The required area and what governs it: the largest that is asked for, no more than the caps, no less than the floors."""
    area, governs = 0, None
    for kind, asked in [(one["kind"], one["requiredArea"]) for one in steps if one["kind"] not in SILENT]:
        if asked < area if kind == "cap" else asked > area: area, governs = asked, kind
    return area, governs

def result_faults(edition, result):
    role, steps, at, outcome = (result[key] for key in ("role", "steps", "citation", "outcome"))
    facts, read, kind, required = edition.roles[role], column(result["material"]), outcome["kind"], result["requiredArea"]
    head = {"edition": edition.year, "name": facts["name"], "purpose": facts["purpose"]}
    if any(result[key] != head[key] for key in head): yield "edition, name or purpose is not that of the role"
    cited = [at] + [s["citation"] for s in steps] + [c["citation"] for s in steps for c in s.get("conductors", [])]
    if result["evidence"] != weakest([one["evidence"] for one in cited]): yield "evidence is not that of the weakest step"
    sets = [one for one in edition.policies if f"{one}-".startswith(STEMS.get(role, role) + "-")]
    ruled, by_policy = [s for s in sets if cite(edition.policies[s]["basis"]["rule"]) == at], role in RATED
    if at not in edition.known and not ruled: yield f"{at['section']} is not a place that sends {role} to a size"
    if kind == "not-required":
        if steps or required or result["governs"] or outcome["citation"] != at: yield "something is required after all"
        return
    own, readings = [s for s in steps if s["kind"] != "standard-size"], []
    if by_policy or steps[0]["kind"] == "sum":
        extra = lambda s: s["kind"] == "load" or s.get("why") == "electrode" or (by_policy and s["kind"] == "floor")
        degrees = next((s["temperature"] for s in own if s["kind"] == "assumed"), 75)
        make = lambda s, changed={}: edition.by_rating(edition.policy(s, changed), result) if by_policy else edition.by_supply(
            edition.policy(s, changed), steps[0]["supply"], result["material"], degrees)
        faults = [(compared(make(s), [one for one in own if not extra(one)]), s) for s in ruled + sets]
        fault, name = next((one for one in faults if one[0] is None), faults[0])
        if fault: yield f"{fault} (policy {name})"
        asks = lambda changed={}: limited(make(name, changed) + [one for one in own if extra(one)])[0]
        for kind, chosen, ways in [] if fault or by_policy else [(r["id"], r["default"], r["alternatives"]) for r in edition.open(name)]:
            chosen = edition.chosen.get(kind, chosen)
            areas = [{"alternative": w["id"], "requiredArea": asks({kind: w["id"]})} for w in ways if w["id"] != chosen]
            if any(w["requiredArea"] != asks() for w in areas): readings.append({"id": kind, "chosen": chosen, "otherwise": areas})
        told = [r for r in result["readings"] if r["id"] in {one["id"] for one in edition.open(name)}]
        if not fault and not by_policy and readings != told: yield f"readings are not {readings}"
        own = [s for s in own if extra(s)]
    for one in own:
        if not edition.stands(one, read): yield f"step {one['kind']} does not stand in {one['citation']['section']}"
    if limited(steps) != (required, result["governs"]): yield f"{limited(steps)} is required and governs"
    size = next((s for s in edition.standard if edition.area[s] >= required and result["form"] == "wire"), None)
    last = step("standard-size", edition.sections["conductor-sizes"], requiredArea=required, size=size, area=edition.area.get(size))
    yield from filter(None, [compared([last] if size else [], [s for s in steps if s["kind"] == "standard-size"])])
    if (outcome.get("size"), outcome.get("requiredArea")) != ((size, None) if size else (None, required)): yield "outcome is another"

def number(value):
    """A number as JavaScript writes it."""
    if isinstance(value, int) or value.is_integer() and abs(value) < 1e21: return str(int(value))
    digits, _, power = repr(value).partition("e")
    return format(Decimal(repr(value)), "f") if 1e-6 <= abs(value) < 1e21 else f"{digits}e{int(power):+d}"
def canonical(value):
    if isinstance(value, dict): return "{" + ",".join(canonical(k) + ":" + canonical(value[k]) for k in sorted(value)) + "}"
    if isinstance(value, list): return "[" + ",".join(map(canonical, value)) + "]"
    return number(value) if type(value) in (int, float) else json.dumps(value, ensure_ascii=False)
def fingerprint(schedule):
    mark, unsigned = 0xCBF29CE484222325, canonical({key: value for key, value in schedule.items() if key != "fingerprint"})
    for byte in unsigned.encode("utf-8", "backslashreplace"): mark = (mark ^ byte) * 0x100000001B3 % 2 ** 64
    return "-".join(f"{mark:016x}"[i:i + 4] for i in (0, 4, 8, 12))

def schedule_faults(folder, schedule, editions={}):
    code, key = schedule["code"], json.dumps(schedule["code"], sort_keys=True)
    if key not in editions: editions[key] = Edition(folder, code["year"], code.get("readings", {}))
    if schedule["edition"] != code["year"] or schedule["format"] != 1 or code.get("amendments"):
        yield "schedule", "edition or format is another, or has amendments, which the tables do not know"
    ids, feet = [one["id"] for one in schedule["conductors"]], {}
    for one in schedule["conductors"]:
        result, outcome, count = one["result"], one["result"]["outcome"], one["quantity"]
        try: yield from ((one["id"], fault) for fault in result_faults(editions[key], result))
        except (LookupError, TypeError, ValueError, RuntimeError) as error: yield one["id"], f"cannot be followed: {error!r}"
        each = {"conductor": outcome.get("quantity"), "area-only": 1}.get(outcome["kind"], 0)
        fits = type(count) is int and (count >= 1 and count % each == 0 if each else count == 0)
        if ids.count(one["id"]) > 1 or one["role"] != result["role"] or not fits: yield one["id"], "id, role or quantity makes no sense"
        metal, counts = (result["material"], outcome.get("size")), "alternative" not in one and outcome["kind"] == "conductor"
        if "lengthFeet" in one and counts: feet[metal] = feet.get(metal, 0) + count * one["lengthFeet"]
    if {(one["material"], one["size"]): one["feet"] for one in schedule["totals"]} != feet: yield "schedule", "totals are others"
    if schedule["fingerprint"] != fingerprint(schedule): yield "schedule", "fingerprint is another"

def main(arguments):
    folder, *files = [one for one in arguments if one != "--stream"]
    sources = [open(file, encoding="utf-8") for file in files] or [sys.stdin]
    texts = (text for source in sources for text in (source if "--stream" in arguments else [source.read()]) if text.strip())
    schedules = (one for given in map(json.loads, texts) for one in (given if isinstance(given, list) else [given]))
    return 1 if [print(f"{one['title']}: {at}: {fault}") for one in schedules for at, fault in schedule_faults(folder, one)] else 0
if __name__ == "__main__": sys.exit(main(sys.argv[1:]))
