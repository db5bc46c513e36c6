# Reference values for tests/statistics and tests/dates. Run from this folder:
#   Rscript statistics.R > statistics.json && npx biome format --write statistics.json
# Needs R with the packages vegan (Barro Colorado Island tree counts, mites, dune meadows), cluster (daisy,
# the flower table), gmp (exact fractions) and jsonlite. Nothing here shares code with the site.
suppressPackageStartupMessages({
  library(vegan); library(cluster); library(gmp); library(jsonlite)
})

rows <- function(frame) lapply(seq_len(nrow(frame)), function(i) as.list(frame[i, ]))
confidences <- c(0.8, 0.9, 0.95, 0.99, 0.999)

normal <- data.frame(confidence = confidences, z = qnorm((1 + confidences) / 2))

# Wilson: prop.test without continuity correction inverts the score test.
wilson <- do.call(rbind, lapply(list(c(81, 263), c(0, 20), c(5, 10), c(5, 25), c(10, 10), c(1, 1), c(0, 1),
                                     c(1, 2), c(6, 15), c(2, 15), c(999, 1000)), function(xn)
  do.call(rbind, lapply(confidences, function(level) {
    test <- suppressWarnings(prop.test(xn[1], xn[2], conf.level = level, correct = FALSE))
    data.frame(successes = xn[1], trials = xn[2], confidence = level,
               value = unname(test$estimate), low = test$conf.int[1], high = test$conf.int[2])
  }))))

# Garwood: poisson.test.
poisson <- do.call(rbind, lapply(list(c(0, 1), c(1, 1), c(2, 1), c(3, 12.5), c(0, 8), c(10, 0.5), c(250, 30)), function(kt)
  do.call(rbind, lapply(confidences, function(level) {
    test <- poisson.test(kt[1], kt[2], conf.level = level)
    data.frame(events = kt[1], exposure = kt[2], confidence = level,
               value = unname(test$estimate), low = test$conf.int[1], high = test$conf.int[2])
  }))))

# Waiting time: under the posterior Gamma(k + 1/2, T) the wait is T/(k + 1/2) times an F(2, 2k + 1) variate.
waiting <- do.call(rbind, lapply(list(c(0, 8), c(1, 8), c(3, 12.5), c(40, 90)), function(kt)
  do.call(rbind, lapply(confidences, function(level) {
    a <- kt[1] + 0.5
    wait <- function(p) qf(p, 2, 2 * a) * kt[2] / a
    data.frame(events = kt[1], exposure = kt[2], confidence = level, value = wait(0.5),
               low = wait((1 - level) / 2), high = wait((1 + level) / 2))
  }))))

# Serial numbers in exact fractions: every N from m upwards is tried in turn, ties kept.
fraction <- function(text) as.bigq(sub("^0\\.", "", text), paste0("1", strrep("0", nchar(text) - 2)))
upper <- function(seen, probability, alpha) {
  total <- as.bigz(seen)
  while (probability(total + 1) >= alpha) total <- total + 1
  as.numeric(total)
}
alphas <- c(`0.8` = "0.20", `0.9` = "0.10", `0.95` = "0.05", `0.99` = "0.01")
serial <- do.call(rbind, lapply(list(c(4, 14), c(4, 60), c(5, 525), c(31, 2787), c(2, 4), c(2, 6), c(2, 2),
                                     c(3, 5), c(7, 7), c(40, 60)), function(km)
  do.call(rbind, lapply(names(alphas), function(level) {
    reach <- function(total) as.bigq(chooseZ(km[2], km[1]), chooseZ(total, km[1]))
    data.frame(distinct = km[1], largest = km[2], confidence = as.numeric(level),
               value = km[2] + km[2] / km[1] - 1, low = km[2], high = upper(km[2], reach, fraction(alphas[[level]])))
  }))))
# The start unknown: P(max - min <= d) = sum over s of (N - s) C(s - 1, k - 2) / C(N, k), term by term.
unknownStart <- do.call(rbind, lapply(list(c(31, 2705), c(3, 3), c(3, 10), c(4, 13), c(5, 40), c(12, 30)), function(kw)
  do.call(rbind, lapply(names(alphas), function(level) {
    k <- kw[1]; w <- kw[2]
    steps <- (k - 1):(w - 1)
    ways <- do.call(c, lapply(steps, function(s) chooseZ(s - 1, k - 2)))
    reach <- function(total) as.bigq(sum((total - as.bigz(steps)) * ways), chooseZ(total, k))
    data.frame(distinct = k, span = w, confidence = as.numeric(level),
               value = (w - 1) * (k + 1) / (k - 1) - 1, low = w, high = upper(w, reach, fraction(alphas[[level]])))
  }))))

# Chao1 (bias-corrected) of every sample of three of vegan's tables, with vegan's own standard error.
data(BCI, mite, dune)
chao1 <- do.call(rbind, lapply(list(BCI = BCI, mite = mite, dune = dune), function(table) {
  estimates <- estimateR(table)
  data.frame(distinct = unname(specnumber(table)), once = rowSums(table == 1), twice = rowSums(table == 2),
             sightings = rowSums(table), value = estimates["S.chao1", ], se = estimates["se.chao1", ])
}))
chao1$se[is.nan(chao1$se)] <- NA

# Gower: daisy, on the flower table (nominal V1 to V4; V5 to V8 by range) and on one with gaps.
data(flower)
plain <- data.frame(lapply(flower[1:4], function(column) factor(as.character(column))),
                    lapply(flower[5:8], function(column) as.numeric(column)))
gaps <- data.frame(a = factor(c("1", "0", "1", NA)), b = factor(c("red", "red", "blue", "blue")), c = c(10, 20, 30, 50))
likeness <- function(table) 1 - as.matrix(daisy(table, metric = "gower"))
gower <- list(
  flower = list(nominal = unname(as.matrix(flower[1:4])), numeric = unname(as.matrix(plain[5:8])),
                ranges = unname(sapply(plain[5:8], function(column) diff(range(column)))),
                likeness = unname(likeness(plain))),
  gaps = list(likeness = unname(likeness(gaps)))
)
gower$flower$nominal <- matrix(as.character(gower$flower$nominal), ncol = 4)

# Conditional entropy from the joint table: H(variant, value) - H(value).
bits <- function(p) -sum(p[p > 0] * log2(p[p > 0]))
entropies <- lapply(list(
  list("a", "a", "b", "b"), list("a", "b"), list(c("a", "b"), "b"), list("a", "a", "b", "c", c("b", "c")),
  list(c("a", "b", "c"), c("c", "d"), "d", "d", "d", c("a", "d")), list("a", "b", NULL), list("a")
), function(found) {
  values <- sort(unique(unlist(found)))
  joint <- sapply(found, function(own) {
    if (is.null(own)) own <- values
    (values %in% own) / length(own) / length(found)
  })
  list(candidates = lapply(found, function(own) if (is.null(own)) NULL else I(own)),
       entropy = bits(joint) - bits(rowSums(matrix(joint, nrow = length(values)))))
})

# Day numbers of the proleptic Gregorian calendar.
dates <- c("1970-01-01", "1969-12-31", "2000-02-29", "1900-02-28", "1900-03-01", "1582-10-15", "1752-09-14",
           "0001-01-01", "1941-12-31", "2026-03-14", "9999-12-31")
days <- data.frame(date = dates, day = as.numeric(as.Date(dates)))

cat(toJSON(list(
  made = list(R = R.version.string, vegan = as.character(packageVersion("vegan")),
              cluster = as.character(packageVersion("cluster")), gmp = as.character(packageVersion("gmp"))),
  normal = normal, wilson = wilson, poisson = poisson, waiting = waiting, serial = serial,
  unknownStart = unknownStart, chao1 = chao1, gower = gower, entropies = entropies, days = days
), digits = I(15), auto_unbox = TRUE, dataframe = "rows", na = "null", null = "null", matrix = "rowmajor", rownames = FALSE), "\n")
