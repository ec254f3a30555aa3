using BenchmarkDotNet.Columns;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Running;

// The median is what the limits are stated in. The measured programs are built from all the sources, which takes a while on a busy machine.
BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly)
    .Run(args, DefaultConfig.Instance.AddColumn(StatisticColumn.Median).WithBuildTimeout(TimeSpan.FromMinutes(10)));
