"""Confirms or refutes schedules of conductors from the tables alone, and from their installations where given. Shares no code with the library.

usage: verify.py TABLES [--installation FILE] [FILE ...]
       verify.py --stream TABLES

TABLES is the folder of the tables of the code as JSON and CSV. Each FILE, or standard input, holds a schedule, a pair {"installation": ..., "schedule": ...}
or a list of these; with --stream each line of standard input holds one. With its installation, what is missing in a schedule is noticed too, and what stands
in another's place. Prints a line for each refuted statement (title, conductor, reason), then how much was confirmed and what was not.
Exit status 0 if nothing is refuted, 1 if anything is, 2 for a wrong call.
"""
import csv, json, operator, os, sys
from collections import Counter
from decimal import Decimal
from itertools import zip_longest
LEVELS = ["memory", "carried", "bracketed", "single", "confirmed"]
RATED, SILENT = ["equipment-grounding-conductor", "equipment-bonding-jumper"], ["sum", "assumed", "shared", "standard-size"]
# Sizes that stand in a sentence, not in the table of named sizes; roles of which the sets of policies are named by what they bond.
FIXED = {"parallel-minimum": "1/0 AWG", "tray-single-conductor": "4 AWG"}
STEMS = {"water-piping-bonding-jumper": "water-piping", "structural-metal-bonding-jumper": "structural-metal"}
def column(material): return "copper" if material == "copper" else "aluminum"
def up(a, b, c): return -(-a * b // c)
def weakest(levels): return min((one for one in levels if one != "vouched"), key=LEVELS.index, default="confirmed")
def vouch(amendment): return {"section": f"{amendment['citation']['jurisdiction']}, {amendment['citation']['section']}", "evidence": "vouched"}
def applies(amendment, known):  # whether every condition of an amendment is known to hold
    tests = {"lengthBelowFeet": ("lengthFeet", operator.lt), "lengthFromFeet": ("lengthFeet", operator.ge), "location": ("location", operator.eq),
             "serviceFromAmperes": ("serviceAmperes", operator.ge), "serviceThroughAmperes": ("serviceAmperes", operator.le)}
    return all(tests[name][0] in known and tests[name][1](known[tests[name][0]], limit) for name, limit in amendment.get("when", {}).items())
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
    """The tables as one edition has them, under the amendments in force and the readings."""
    def __init__(self, folder, code, more={}):
        year, known = code["year"], {**code.get("circumstances", {}), **more}
        self.known_facts, self.amendments = known, [one for one in code.get("amendments", []) if applies(one, known)]
        self.enforced = {one["reading"]: one["alternative"] for one in self.amendments if one["kind"] == "reading"}
        chosen = {**code.get("readings", {}), **self.enforced}
        load = lambda name: json.load(open(os.path.join(folder, name + ".json"), encoding="utf-8"))
        rows = lambda name: [r for r in csv.DictReader(open(os.path.join(folder, "csv", name + ".csv"), encoding="utf-8")) if r["edition"] == year]
        self.year, self.chosen, self.tables, places, evidence = year, chosen, {}, {}, rows("evidence")
        for name in ("conductor-properties", "electrode-conductor", "bonding-conductor", "equipment-grounding", "raceway-ampacity"):
            table = load(name)
            blocks = [[]] + [block["rows"] for block in table["blocks"] if block["from"] <= year]
            cells = {f"{blocks[-1][int(e['row']) - 1][0] if e['row'] else ''} {e['column']}": e["level"] for e in evidence if e["table"] == name}
            self.tables[name] = {"rows": [list(row) for row in blocks[-1]], "number": table["number"][year], "cells": cells, "level": cells.get(" ")}
        self.area = {size: area for size, area, _ in self.tables["conductor-properties"]["rows"]}
        self.standard = [size for size, _, standard in self.tables["conductor-properties"]["rows"] if standard]
        pair = lambda row: (row["section"], row["level"])
        self.named = {r["name"]: {**r, "citation": pair(r)} for r in rows("named-sizes")}
        self.sections = {r["topic"]: cite(pair(r)) for r in rows("sections")}
        self.known = list(self.sections.values()) + [cite(v["citation"]) for v in self.named.values()]
        self.roles = {r["role"]: r for r in rows("roles")}  # and the readings that change a policy; others act through electrodes
        every = load("readings")["readings"]
        self.defaults, self.amended = {r["id"]: r["default"] for r in every}, self.amended_cells()
        self.readings = [r for r in every if any(a.get("policy") for a in r["alternatives"])]
        for r in rows("policy-basis"): places.setdefault(r["policy"], {})[r["part"]] = pair(r)
        limit = lambda r, name, at: {"copper": r[name + "Copper"], "aluminum": r[name + "Aluminum"], "citation": at[name]} if name in at else None
        self.policies = {r["policy"]: {**{k: {"true": True, "false": False}.get(v, v) for k, v in r.items()}, "floor": limit(r, "floor", at), "ceiling": limit(r, "ceiling", at),
                                       "basis": at} for file in ("policies", "rating-policies") for r in rows(file) for at in [places[r["policy"]]]}
    def amended_cells(self):  # lays the amendments of cells over the tables; where each cell that they changed stands, by the amendment
        changed, metals = {}, ("copper", "aluminum")
        for one in [one for one in self.amendments if one["kind"] == "cell"]:
            rated, row = one["table"] == "equipment-grounding", one["row"]
            place = None if row == "last" else row if rated else self.area.get(row) or int(str(row).split()[0]) * 1000
            end = lambda r: r[0] if rated or not r[0] else self.area.get(r[0]) or int(r[0].split()[0]) * 1000
            for r in self.tables[one["table"]]["rows"]:
                if end(r) == place:
                    r[(1 if rated else 2) + metals.index(one["column"])] = one["size"]
                    changed[one["table"], r[0], one["column"]] = vouch(one)["section"]
        return changed
    def as_amended(self, at, *cell): return {**at, "section": f"{at['section']} as amended by {self.amended[cell]}"} if cell in self.amended else at
    def floors(self, role, material):  # minimum sizes that amendments in force set for a role and a material
        of = {"floor": lambda a: a["role"] == role and a.get(column(material)), "material": lambda a: a["role"] in (role, "every-role") and a["material"] == material and a.get("allowedFrom")}
        found = [(kind, one, of[kind](one)) for kind in of for one in self.amendments if one["kind"] == kind]
        return [step("floor", vouch(one), why="amendment", size=size, requiredArea=self.area[size]) for _, one, size in found if size]
    def basis(self, role):  # the amendment in force that puts a row by the rating of the service in place of a role's own table
        found = [one for one in self.amendments if one["kind"] == "basis" and one["use"] == "equipment-grounding-table" and one["role"] == role]
        return found[-1] if found and self.known_facts.get("serviceAmperes", 1e9) <= self.tables["equipment-grounding"]["rows"][-1][0] else None
    def policy(self, name, changed={}):
        policy, chosen = dict(self.policies[name]), {**self.chosen, **changed}
        for r in self.open(name):
            policy.update(next(a for a in r["alternatives"] if a["id"] == chosen.get(r["id"], r["default"])).get("policy", {}))
        return policy
    def open(self, name): return [r for r in self.readings if name in r["policies"] and self.year in r["editions"]]
    def cell(self, table, row, col): return {"section": self.tables[table]["number"], "evidence": self.tables[table]["cells"].get(f"{row} {col}", self.tables[table]["level"])}
    def ampacity(self, size, metal, degrees): return next((row[(0 if metal == "copper" else 3) + [60, 75, 90].index(degrees) + 1] for row in self.tables["raceway-ampacity"]["rows"] if row[0] == size), None)
    def carrying(self, amperes, metal, degrees): return next((s for s in self.standard if (self.ampacity(s, metal, degrees) or 0) >= amperes), None)
    def assumed(self, one, read, degrees):  # what stands in for a conductor; a size that the table leaves out counts as the next larger it has
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
            spared = metal != "mixed" and (rule == "never" or single or rule not in ("always", "larger-through-threshold") and not above(metal, area))
            if metal == read or spared: return "no"
            open_threshold = rule == "larger-through-threshold" and metal != "mixed" and not above(metal, area)
            return "both" if rule == "larger-of-both" or open_threshold else "yes"
        def decide(metal, area):
            row = next((row for row in bounded if area <= through(row, metal)), last)
            end, known = through(row if row in bounded else bounded[-1], metal), {"entered": metal, "area": area}
            if row is None or (row is last and policy["oneEighth"]):
                return step("one-eighth", basis["oneEighth"], **known, threshold=end, requiredArea=up(area, 1, 8))
            known.update(over=max((at for at in (through(one, metal) for one in bounded) if at < area), default=None), through=None if row is last else end)
            at = self.as_amended(cite(basis["row"]), policy["table"], row[0], read)
            return step("row", at, **known, read=read, size=row[cell], requiredArea=self.area[row[cell]])
        entered = read if metal == "mixed" else metal
        ways, ends = [[decide(entered, area)]] if replaced(metal, area) != "yes" else [], [(entered, area)]
        if replaced(metal, area) != "no":
            key, alike = lambda one: (one["size"], column(one["material"])), {}
            for one in [one for one in conductors(supply) if column(one["material"]) != read]:
                alike.setdefault(key(one), self.assumed({k: one[k] for k in ("size", "material")}, read, degrees))
            counted = total(supply, policy["sum"], lambda one: alike[key(one)]["area"] if key(one) in alike else own(one))
            ends = [(read, counted)] + (ends if metal != "mixed" else [])
            ways.append([step("assumed", basis["otherMaterial"], temperature=degrees, conductors=list(alike.values()), area=counted), decide(read, counted)])
        for part in ("copper", "aluminum") if metal == "mixed" else ():
            alone = total(supply, policy["sum"], lambda one: own(one) if column(one["material"]) == part else 0)
            ends += [(part, alone)]
            if replaced(part, alone) != "yes": ways.append([summed(part, alone), decide(part, alone)])
        best = max(ways, key=lambda way: way[-1]["requiredArea"])
        most = {"set": area, "conductor": max(map(own, conductors(supply)))}.get(policy["cap"])
        caps = [("ungrounded-conductors", most, basis["cap"])] if most and metal == read else []
        caps += [("largest-size", self.area[at[read]], at["citation"]) for at in [policy["ceiling"]] if at]
        floors = [("last-row", last[cell], self.as_amended(cite(basis["row"]), policy["table"], None, read))] if policy["lastRowFloor"] and last and any(above(*end) for end in ends) else []
        floors += [("least-size", at[read], at["citation"]) for at in [policy["floor"]] if at]
        return ([summed(metal, area)] + [one for way in ways if way is best or way[0]["kind"] != "sum" for one in way]
                + [step("cap", at, why=why, requiredArea=most) for why, most, at in caps if most < best[-1]["requiredArea"]]
                + [step("floor", at, why=why, size=size, requiredArea=self.area[size]) for why, size, at in floors])
    def rating_row(self, amperes, read):
        end, *sizes = next(row for row in self.tables["equipment-grounding"]["rows"] if amperes <= row[0])
        size, at = sizes[0 if read == "copper" else 1], self.as_amended(self.cell("equipment-grounding", end, read), "equipment-grounding", end, read)
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
    def least_of_circuit(self, amperes, read):  # the smallest conductor that a device of so many amperes may protect (240.4(D)), and its place
        names = [word for word, above in (("fifteen", 15), ("twenty", 20), ("twenty-five", 25), ("thirty", 30)) if amperes > above]
        return (self.named[f"least-above-{names[-1]}-amperes"][read], cite(self.named[f"least-above-{names[-1]}-amperes"]["citation"])) if names else (None, None)
    def stands(self, one, read, floors=()):
        """Whether a step that no policy makes has the numbers that the place which it cites names."""
        kind, at, size, area = one["kind"], one["citation"], one.get("size"), one.get("requiredArea")
        if one.get("why") == "amendment": return one in floors
        if kind == "rating-row": return one == self.rating_row(one["amperes"], read)
        if kind == "load":
            cell, sections = self.cell("raceway-ampacity", size, f"{read}{one['temperature']}"), at["section"].split(", ")
            (least, limit), carrying = self.least_of_circuit(one.get("circuitAmperes", 0), read), self.carrying(one["amperes"], read, one["temperature"])
            fits = size == (least or carrying) and area == self.area[size] >= self.area[carrying] and (least is None or self.area[least] > self.area[carrying])
            known = [*sections[:-1], cell["section"]] == sections and {*sections[:-1]} <= {one["section"] for one in self.known}
            return fits and known and at["evidence"] == weakest([one["evidence"] for one in (cell, *(self.sections[t] for t in ("neutral-load", "terminations", "impedance-ampacity")), limit) if one and (one is cell or one["section"] in sections[:-1])])
        same = lambda one: at in (one, {**one, "evidence": weakest([one["evidence"], {"cap": self.sections["electrode-ceiling-connection"]["evidence"], "named-size": "memory"}.get(kind, one["evidence"])])})
        sizes = [v[read] or v["copper"] for v in self.named.values() if same(cite(v["citation"]))] + [FIXED[topic] for topic in FIXED if same(self.sections[topic])]
        fits = area in [self.area[name] for name in sizes] if sizes else kind == "cap" or size in self.area
        return any(map(same, self.known)) and fits and (size is None or self.area.get(size) == area)
def compared(expected, actual):  # the first difference of two lists of steps; nothing if they are alike
    for one, other in zip_longest(expected, actual):
        if one is None or other is None: return f"step {(one or other)['kind']} is {'missing' if one else 'not to be there'}"
        for key in sorted(one.keys() | other.keys()):
            if one.get(key) != other.get(key): return f"step {other['kind']}: {key} is {other.get(key)}, not {one.get(key)}"
def limited(steps):  # the required area and what governs it: the largest that is asked for, no more than the caps, no less than the floors
    area, governs = 0, None
    for kind, asked in [(one["kind"], one["requiredArea"]) for one in steps if one["kind"] not in SILENT]:
        if asked < area if kind == "cap" else asked > area: area, governs = asked, kind
    return area, governs
def result_faults(edition, result):
    role, steps, at, outcome = (result[key] for key in ("role", "steps", "citation", "outcome"))
    facts, read, kind, required = edition.roles[role], column(result["material"]), outcome["kind"], result["requiredArea"]
    if [result["edition"], result["name"]] != [edition.year, facts["name"]] or result["purpose"] not in (facts["purpose"], "load" if role == "grounded-conductor" else None): yield "edition, name or purpose is not that of the role"
    cited = [at] + [s["citation"] for s in steps] + [c["citation"] for s in steps for c in s.get("conductors", [])]
    if result["evidence"] != weakest([one["evidence"] for one in cited]): yield "evidence is not that of the weakest step"
    sets = [one for one in edition.policies if f"{one}-".startswith(STEMS.get(role, role) + "-")]
    ruled, by_policy = [s for s in sets if at in (c := cite(edition.policies[s]["basis"]["rule"]), {**c, "evidence": "memory"} if role == "main-bonding-jumper" else c)], role in RATED
    floors, other = edition.floors(role, result["material"]) if kind != "not-required" else [], edition.basis(role)
    other = other if other and vouch(other) == at else None
    for r in result["readings"]:
        if r["chosen"] != edition.chosen.get(r["id"], edition.defaults.get(r["id"])): yield f"reading {r['id']} is not {r['chosen']} under the code"
    if other and steps[:1] != [edition.rating_row(edition.known_facts["serviceAmperes"], read)]: yield "the row by the rating of the service is another"
    if [s for s in steps if s.get("why") == "amendment"] != floors: yield "floors of amendments are others"
    if at not in edition.known and not ruled and not other: yield f"{at['section']} is not a place that sends {role} to a size"
    if kind == "not-required":
        if steps or required or result["governs"] or outcome["citation"] != at: yield "something is required after all"
        return
    own, readings = [s for s in steps if s["kind"] != "standard-size"], []
    if not other and (by_policy or steps[0]["kind"] == "sum"):
        extra = lambda s: s["kind"] == "load" or s.get("why") in ("electrode", "amendment") or (by_policy and s["kind"] == "floor")
        degrees = next((s["temperature"] for s in own if s["kind"] == "assumed"), 75)
        make = lambda s, changed={}: edition.by_rating(edition.policy(s, changed), result) if by_policy else edition.by_supply(
            edition.policy(s, changed), steps[0]["supply"], result["material"], degrees)
        faults = [(compared(make(s), [one for one in own if not extra(one)]), s) for s in ruled + sets]
        fault, name = next((one for one in faults if one[0] is None), faults[0])
        if fault: yield f"{fault} (policy {name})"
        asks = lambda changed={}: limited(make(name, changed) + [one for one in own if extra(one)])[0]
        for kind, chosen, ways in [] if fault or by_policy else [(r["id"], r["default"], r["alternatives"]) for r in edition.open(name) if r["id"] not in edition.enforced]:
            chosen = edition.chosen.get(kind, chosen)
            areas = [{"alternative": w["id"], "requiredArea": asks({kind: w["id"]})} for w in ways if w["id"] != chosen]
            if any(w["requiredArea"] != asks() for w in areas): readings.append({"id": kind, "chosen": chosen, "otherwise": areas})
        told = [r for r in result["readings"] if r["id"] in {one["id"] for one in edition.open(name)}]
        if not fault and not by_policy and readings != told: yield f"readings are not {readings}"
        own = [s for s in own if extra(s)]
    for one in own:
        if not edition.stands(one, read, floors) and not (other and one in steps[:1]): yield f"step {one['kind']} does not stand in {one['citation']['section']}"
    if limited(steps) != (required, result["governs"]): yield f"{limited(steps)} is required and governs"
    size = next((s for s in edition.standard if edition.area[s] >= required and result["form"] == "wire"), None)
    last = step("standard-size", edition.sections["conductor-sizes"], requiredArea=required, size=size, area=edition.area.get(size))
    yield from filter(None, [compared([last] if size else [], [s for s in steps if s["kind"] == "standard-size"])])
    if (outcome.get("size"), outcome.get("requiredArea")) != ((size, None) if size else (None, required)): yield "outcome is another"
def number(value):  # as JavaScript writes it
    digits, _, power = repr(value).partition("e")
    if isinstance(value, int) or value.is_integer() and abs(value) < 1e21: return str(int(value))
    return format(Decimal(repr(value)), "f") if 1e-6 <= abs(value) < 1e21 else f"{digits}e{int(power):+d}"
def canonical(value):
    if isinstance(value, dict): return "{" + ",".join(canonical(k) + ":" + canonical(value[k]) for k in sorted(value)) + "}"
    if isinstance(value, list): return "[" + ",".join(map(canonical, value)) + "]"
    return number(value) if type(value) in (int, float) else json.dumps(value, ensure_ascii=False)
def fingerprint(schedule):
    mark, unsigned = 0xCBF29CE484222325, canonical({key: value for key, value in schedule.items() if key != "fingerprint"})
    for byte in unsigned.encode("utf-8", "backslashreplace"): mark = (mark ^ byte) * 0x100000001B3 % 2 ** 64
    return "-".join(f"{mark:016x}"[i:i + 4] for i in (0, 4, 8, 12))
# What a schedule has a line for: the list of the installation, and the roles of which one has it. Members that are not listed are counted as not confirmed.
ANSWERED = {"circuits": ["equipment-grounding-conductor"], "piping": ["water-piping-bonding-jumper", "other-piping-bonding-jumper"], "structuralMetal": ["structural-metal-bonding-jumper"],
            "intersystem": ["intersystem-bonding-conductor"], "generators": ["supply-side-bonding-jumper", "equipment-grounding-conductor"]}
FOLLOWED = {*ANSWERED, "format", "title", "code", "materials", "services", "derivedSystems", "buildings", "existing"}
MATERIALS = {"main-bonding-jumper": "bondingJumpers", "system-bonding-jumper": "bondingJumpers", "supply-side-bonding-jumper": "bondingJumpers",
             "grounded-conductor": "groundedConductors", "equipment-grounding-conductor": "equipmentGrounding"}
CEILING = {"rod": "rod-electrode-ceiling", "pipe": "rod-electrode-ceiling", "plate": "rod-electrode-ceiling", "concrete-encased": "concrete-electrode-ceiling", "ring": "ring-electrode-least"}
SMALL, MANY, FORBIDDEN, ALONG = "parallel-below-1-0", "more-than-six-disconnects", "material-forbidden", ("grounded-conductor", "supply-side-bonding-jumper", "equipment-grounding-conductor")
def has(kind): return lambda r: any(s["kind"] == kind for s in r["steps"])
def is_capped(r): return r["governs"] == "cap" and any(s.get("why") == "ungrounded-conductors" and s["requiredArea"] == r["requiredArea"] for s in r["steps"])
CAUTIONS = {  # a caution of a result, and whether its steps require it
    "assumed-conductors": has("assumed"), "cap-applied": lambda r: is_capped(r) and not has("rating-row")(r),
    "no-single-conductor-of-equal-ampacity": lambda r: any(c["assumed"] is None for s in r["steps"] for c in s.get("conductors", [])),
    "mixed-supply-materials": lambda r: r["role"] not in RATED and any(s.get("column") == "mixed" for s in r["steps"][:1]),
    "conductors-required-for-load": lambda r: r["role"] not in RATED and any("requiredForAmperes" in s.get("supply", {}) for s in r["steps"]),
    "above-largest-standard-size": lambda r: r["outcome"].get("why") == "above-largest-standard-size"}
def plain(supply):  # so that two can be compared: how often each set occurs, and the load that it is required for
    found = Counter()
    for one in supply["sets"]: found[canonical({k: one[k] for k in one if k != "count"})] += one["count"]
    return found, supply.get("requiredForAmperes")
def joined(supplies, raceways=1):
    loads = [one["requiredForAmperes"] for one in supplies if "requiredForAmperes" in one]
    return {"sets": [{**one, "count": one["count"] / raceways} for supply in supplies for one in supply["sets"]], **({"requiredForAmperes": sum(loads)} if loads else {})}
def metals(thing):  # every material that is named within a thing of an installation
    inner = {one for value in (thing.values() if isinstance(thing, dict) else thing if isinstance(thing, list) else []) for one in metals(value)}
    return inner | {value for key, value in thing.items() if "aterial" in key and isinstance(value, str)} if isinstance(thing, dict) else inner
class Drawn:  # an installation, as far as a schedule has to answer for it
    def __init__(self, given, edition):
        self.given, self.edition, self.systems = given, edition, [one for key in ("services", "derivedSystems") for one in given.get(key, [])]
        self.runs = {run["id"]: (system, run) for system in self.systems for run in system["runs"]}
        self.circuits, self.generators = ({one["id"]: one for one in given.get(key, [])} for key in ("circuits", "generators"))
        self.electrodes = {one["id"]: one["kind"] for system in [*self.systems, *given.get("buildings", [])] for one in system.get("electrodes", [])}
        self.disconnects, self.boxes = ({one["id"] for system in self.systems for one in system.get(key, [])} for key in ("disconnects", "boxes"))
        self.supplies = {id: self.supply(one["supply"]) for id, one in [*self.generators.items(), *((id, run) for id, (_, run) in self.runs.items())]}
        self.supplies.update((id, one["conductors"]) for id, one in self.circuits.items() if "conductors" in one)
    def cut(self, place, by, leaving=lambda runs, here: [(id, one["to"]) for id, (_, one) in runs.items() if one["from"] == here]):
        reached = [place]  # whatever leaves the place runs over one of these
        for here in reached: reached += [to for id, to in leaving(self.runs, here) if id not in by and to not in reached]
        return all(leaving(self.runs, here) for here in reached)
    def supply(self, drawn):
        if "sets" in drawn: return {"sets": drawn["sets"]}
        edition, load, metal = self.edition, drawn["forLoad"], column(drawn["forLoad"]["material"])
        rated, sets = load.get("circuitAmperes", load["amperes"]), load["sets"]
        least = "1/0 AWG" if sets > 1 else edition.least_of_circuit(rated, metal)[0] or edition.standard[0]
        size = max(edition.carrying(load["amperes"] / sets, metal, 60 if rated <= 100 else 75), least, key=edition.area.get)
        return {"sets": [{"count": sets, "size": size, "material": load["material"]}], "requiredForAmperes": load["amperes"]}
    def missing(self, schedule):  # what has no line, caution or violation, though the installation requires one
        lines, services = {(one["role"], one["subject"]) for one in schedule["conductors"]}, self.given.get("services", [])
        wanted = [(one["id"], roles) for key, roles in ANSWERED.items() for one in self.given.get(key, [])]
        wanted += [(id, ["grounded-conductor"]) for id, (system, run) in self.runs.items() if system["grounding"] in ("solidly-grounded", "grounded-phase") or run["from"] in (system.get("source", {}).get("id"), system.get("utility", {}).get("id"))]
        wanted += [(id, [role]) for id in self.generators for role in ("system-bonding-jumper", "grounding-electrode-conductor")] + [(id, ["supply-side-bonding-jumper"]) for id, (system, run) in self.runs.items() if system in services and "metal" in run.get("raceways", {}).get("kind", "").split("-")]
        wanted += [(one["id"], ["grounding-electrode-conductor", "electrode-bonding-jumper"]) for system in services for one in system.get("electrodes", [])]
        for id, roles in wanted:
            if not any((role, id) in lines for role in roles): yield id, f"no line of {' or '.join(roles)}"
        said = {(one["code"], at) for key in ("cautions", "violations") for one in schedule[key] for at in ([one["at"]] if isinstance(one["at"], str) else one["at"])}
        thin = lambda supply: sum(s["count"] for s in supply["sets"]) > 1 and any(self.edition.area[one["size"]] < self.edition.area["1/0 AWG"] for one in conductors(supply))
        asked = [(SMALL, id, thin(self.supplies[id])) for id in [*self.runs, *(id for id, one in self.generators.items() if "deviceAmperes" not in one)]]
        asked += [(MANY, one["id"], sum(d.get("designation") == "service-disconnect" for d in one["disconnects"]) > 6) for one in services]
        for code, id, holds in asked:
            if holds != ((code, id) in said): yield id, f"{code} is {'missing' if holds else 'not to be there'}"
    def misplaced(self, line):  # what a line says otherwise than the installation: ends, number, length, material, what it is sized by, load and rating
        role, subject, result, by, ends = line["role"], line["subject"], line["result"], line["by"], [line[end].get("id", line[end].get("of")) for end in ("from", "to")]
        circuit, generator, (system, run) = self.circuits.get(subject), self.generators.get(subject), self.runs.get(subject, (None, None))
        alone, wire, each, told = circuit or run or generator and {"from": subject, **generator}, result["outcome"]["kind"] != "not-required", result["outcome"].get("quantity", 1), lambda kind, key: [s[key] for s in result["steps"] if s["kind"] == kind]
        share = (circuit or generator).get("raceways", 1) if circuit or generator else (run or {}).get("raceways", {}).get("count", 1)
        if alone and role in ALONG:
            short = role == "supply-side-bonding-jumper" and system in self.given.get("services", []) and run["raceways"]["kind"] != "flexible-metal"  # at a fitting
            wrong = {"ends are others than in the installation": ends != [subject if short else alone["from"], alone["to"]], "length is another": wire and line.get("lengthFeet") != (None if short else alone.get("lengthFeet"))}
            yield from (what for what, holds in wrong.items() if holds)
            common = "common" if generator or system in self.given.get("services", []) or (run or {}).get("raceways", {}).get("kind") == "nonflexible-metal" else "per-raceway"
            number = each if role == "supply-side-bonding-jumper" and (run or {}).get("racewayJumpers", common) != "per-raceway" else each * share
            if wire and line["quantity"] != number: yield f"quantity is {line['quantity']}, not {number}"
        elif role != "electrode-raceway-bonding-jumper" and subject not in [*ends, line["from"].get("of"), *(one["id"] for one in self.systems)]: yield f"does not end at {subject}"
        if not alone and wire and line["quantity"] != each: yield f"quantity is {line['quantity']}, not {each}"
        default = self.given["materials"].get(MATERIALS.get(role), result["material"])
        if result["material"] not in {default} | metals({k: v for k, v in (alone or {}).items() if k not in ("supply", "conductors", "increasedFrom")}): yield f"material is {result['material']}, not {default}"
        least = self.edition.named.get(CEILING.get(self.electrodes.get(subject)))  # no electrode's own size may limit a conductor to another kind
        if subject in self.electrodes and any(s.get("why") == "electrode" and (not least or s["requiredArea"] < self.edition.area[least[column(result["material"])] or least["copper"]]) for s in result["steps"]): yield "is limited to another kind of electrode"
        shared, to = (sorted(id for id, (_, one) in self.runs.items() if one.get(key) == subject) for key in ("in", "to"))
        fed = shared or ([subject] if run or subject in self.generators else to if subject in self.disconnects else None)
        if wire and subject in self.boxes and sorted(by) != to and not self.cut(subject, by): yield f"is sized by {by}, which is not at {subject}"
        if any(one not in self.supplies for one in by) or wire and (by or run) and sorted(by) != (fed or sorted(by)): yield f"is sized by {by}" + (f", not by {fed}" if fed else "")
        whole = [self.supplies[one] for one in by or [subject] if one in self.supplies]
        for supply in told("sum", "supply")[:1] if wire and whole else []:
            if plain(supply) not in [plain(joined(whole)), plain(joined(whole, share))]: yield "the conductors that are added are not those that it is sized by"
        load = run.get("load") if run and role == "grounded-conductor" and system["grounding"] == "solidly-grounded" else None
        if load and load["amperes"] and wire and told("load", "amperes") != [load["amperes"] / share]: yield "the step of its load is missing or another"
        device = next((one for one in (circuit["device"].get("amperes"), circuit["device"].get("aheadOfFeeder", {}).get("amperes"), circuit["device"].get("motor", {}).get("deviceAmperes")) if one), None) if circuit and wire and role in RATED else None
        if device and told("rating-row", "amperes") not in ([], [device]): yield f"goes by {told('rating-row', 'amperes')} A, not by its device of {device} A"
def follow(at, faults):  # faults, each with its place; what cannot be followed is one
    try: yield from (one if isinstance(one, tuple) else (at, one) for one in faults())
    except (LookupError, TypeError, ValueError, RuntimeError, AttributeError) as error: yield at, f"cannot be followed: {error!r}"
def schedule_faults(folder, schedule, given, counts, editions={}):
    def under(**more):
        key = json.dumps([schedule["code"], more], sort_keys=True)
        return editions[key] if key in editions else editions.setdefault(key, Edition(folder, schedule["code"], more))
    code, ids, feet, drawn = schedule["code"], [one["id"] for one in schedule["conductors"]], {}, Drawn(given, under()) if given else None
    if schedule["edition"] != code["year"] or schedule["format"] != 1: yield "schedule", "edition or format is another"
    if given:
        own = {key: given[key] for key in given.keys() - {"$schema", "installed"}}
        if (given["code"], fingerprint(own)) != (code, schedule["installationFingerprint"]): yield "schedule", "code or installationFingerprint is not that of the installation"
        counts.update(f"{key} of the installation" for key in own.keys() - FOLLOWED)
        yield from follow("schedule", lambda: drawn.missing(schedule))
    for one in schedule["conductors"]:
        result, outcome, count, circuit = one["result"], one["result"]["outcome"], one["quantity"], drawn.circuits.get(one["subject"], {}) if drawn else {}
        # A circuit adds its length and its location to what the conditions of amendments ask; without the installation, any place that they name is tried.
        named = [circuit.get("location")] if drawn else [a.get("when", {}).get("location") for a in code.get("amendments", [])]
        lengths = [{}, {"lengthFeet": one["lengthFeet"]}] if "lengthFeet" in one and code.get("amendments") else [{}]
        ways = [{**length, **place} for length in lengths for place in [{}, *({"location": name} for name in named if name)]]
        yield from min((list(follow(one["id"], lambda: result_faults(under(**way), result))) for way in ways), key=len)
        if drawn: yield from follow(one["id"], lambda: drawn.misplaced(one))
        fits = type(count) is int and (count >= 1 and count % each == 0 if (each := {"conductor": outcome.get("quantity"), "area-only": 1}.get(outcome["kind"], 0)) else count == 0)
        yield from ((one["id"], f"{cited['section']} is no section of this edition, or not so well known") for cited in [one.get("placement"), one.get("sizing"), one.get("insteadPermitted", {}).get("citation"), one.get("covering", {}).get("citation")] if cited and cited not in under().known)
        if ids.count(one["id"]) > 1 or one["role"] != result["role"] or not fits: yield one["id"], "id, role or quantity makes no sense"
        if "lengthFeet" in one and "alternative" not in one and outcome["kind"] == "conductor": feet[result["material"], outcome["size"]] = feet.get((result["material"], outcome["size"]), 0) + count * one["lengthFeet"]
        told, vouched = [c["code"] for c in result["cautions"]], result["citation"]["evidence"] == "vouched"
        for name, asked in CAUTIONS.items() if not vouched else []:
            if asked(result) != (name in told) and (asked(result) or name in ("assumed-conductors", "mixed-supply-materials")): yield one["id"], f"caution {name} is {'missing' if asked(result) else 'not to be there'}"
        if FORBIDDEN in told and one["id"] not in [at for v in schedule["violations"] if v["code"] == FORBIDDEN for at in v["at"]]: yield one["id"], f"violation {FORBIDDEN} is missing"
        counts.update(["conductors", *["steps"] * len(result["steps"]), *(f"caution {name}" for name in told if name not in CAUTIONS or vouched)])
    for kind in ("violation", "caution"): counts.update(f"{kind} {one['code']}" for one in schedule[kind + "s"] if one["code"] not in (*((SMALL, MANY) if drawn else ()), FORBIDDEN))
    if {(one["material"], one["size"]): one["feet"] for one in schedule["totals"]} != feet: yield "schedule", "totals are others"
    if schedule["fingerprint"] != fingerprint(schedule): yield "schedule", "fingerprint is another"
def wrong(message): return print(f"verify.py: {message}\n\n{__doc__.strip()}", file=sys.stderr) or 2
def main(arguments):
    if {"--help", "-h"} & {*arguments}: return print(__doc__.strip())
    words, drawn, stream, pairs = [one for one in arguments if one != "--stream"], None, "--stream" in arguments, []
    try:
        if words[-1:] == ["--installation"]: return wrong("--installation requires a file")
        for at in [words.index(one) for one in words if one == "--installation"][:1]: drawn = json.load(open((words.pop(at), words.pop(at))[1], encoding="utf-8"))
        if not words or words[0].startswith("-"): return wrong("name the folder of the tables" if not words else f"{words[0]} is no option")
        folder, *files = words
        if not os.path.isfile(os.path.join(folder, "csv", "policies.csv")): return wrong(f"{folder} holds no tables: it is to be the folder with readings.json and csv/policies.csv")
        for source in [open(file, encoding="utf-8") for file in files] or [sys.stdin]:
            for read in (json.loads(text) for text in (source if stream else [source.read()]) if text.strip()):
                pairs += [(one["schedule"], one["installation"]) if {"schedule", "installation"} <= one.keys() else (one, drawn) for one in (read if isinstance(read, list) else [read])]
        if any("conductors" not in one or "code" not in one for one, _ in pairs): return wrong("what was read is no schedule: it has no conductors or no code")
        if not pairs or drawn and len(pairs) != 1: return wrong("--installation goes with one schedule; give pairs instead" if pairs else "no schedule was read")
    except OSError as error: return wrong(f"{error.filename} cannot be read: {error.strerror}")
    except (ValueError, TypeError, AttributeError) as error: return wrong(f"what was read is no JSON of schedules: {error}")
    counts, head, refuted = Counter(), ("conductors", "steps"), 0
    for one, given in pairs:
        for at, fault in follow("schedule", lambda: schedule_faults(folder, one, given, counts)): refuted += print(f"{one.get('title')}: {at}: {fault}") or 1
    left = ", ".join(f"{counts[name]} x {name}" for name in sorted(counts) if name not in head) or "nothing"
    print(f"{refuted} refuted in {len(pairs)} schedules, {sum(1 for _, one in pairs if one)} with their installations; confirmed: {counts['conductors']} conductors, {counts['steps']} steps; not confirmed: {left}")
    return 1 if refuted else 0
if __name__ == "__main__": sys.exit(main(sys.argv[1:]))
